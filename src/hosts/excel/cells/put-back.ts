import { HostError } from "../../port";
import { rangeAt } from "../ranges";
import { runExcel } from "../run-excel";
import { typedText } from "../typed-text";
import type { Written } from "../written-content";
import { hostWords } from "../../words";

const say = hostWords.excel;

/** What stood in a range before it was written. */
export interface Former {
  /** With its sheet: the one in sight may be another by now. */
  readonly address: string;
  readonly formulas: readonly (readonly Written[])[];
}

/** As it has to be written so that it is again what it was. */
export function formerOf({ address, formulas, values }: Excel.Range): Former {
  const again = (formula: unknown, value: unknown): Written => {
    if (typeof formula === "number" || typeof formula === "boolean") return formula;
    const text = String(formula);
    return text.startsWith("=") && text !== value ? text : typedText(text);
  };
  return {
    address,
    formulas: formulas.map((row, down) => row.map((cell, across) => again(cell, values[down]?.[across]))),
  };
}

/** Puts back what a failed write may have changed, range by range, and says what happened in either case. */
export async function putBack(former: readonly Former[], failure: HostError): Promise<never> {
  // A range that refuses this too has not been written either.
  for (const one of former) await write(one).catch(() => undefined);
  const changed = await stillChanged(former).catch(() => former);
  const { message, code } = failure;
  const addresses = changed.map(({ address }) => address);
  const says = addresses.length === 0 ? say.nothingWritten(message) : say.lookAt(message, addresses);
  throw new HostError(says, code, { cause: failure });
}

function write({ address, formulas }: Former): Promise<void> {
  return runExcel(async (context) => {
    rangeAt(address, context).formulas = formulas.map((row) => [...row]);
    await context.sync();
  });
}

function stillChanged(former: readonly Former[]): Promise<Former[]> {
  return runExcel(async (context) => {
    const ranges = former.map(({ address }) => rangeAt(address, context).load("address,formulas,values"));
    await context.sync();
    return former.filter((one, index) => {
      const range = ranges[index];
      return range === undefined || JSON.stringify(formerOf(range)) !== JSON.stringify(one);
    });
  });
}
