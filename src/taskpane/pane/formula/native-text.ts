import { isBlank, type RawArgument } from "../../../functions/frame/cell";
import { words } from "../../words";
import { CannotShow } from "./cannot-show";
import { cellsIn, type Evaluate, type NativeCall, type NativeCalls, type Node } from "./native-call";
import { numberOf, singleCell } from "./operators";

/** What workbooks do to words before they reach a function of ours. */
export const nativeText: NativeCalls = {
  TRIM: ofText((text) => text.trim().replace(/ +/g, " ")),
  UPPER: ofText((text) => text.toUpperCase()),
  LOWER: ofText((text) => text.toLowerCase()),
  LEN: ofText((text) => text.length),
  LEFT: async ([value, count], evaluate) => (await textAt(value, evaluate)).slice(0, await lengthAt(count, evaluate)),
  RIGHT: async ([value, count], evaluate) => {
    const length = await lengthAt(count, evaluate);
    return length === 0 ? "" : (await textAt(value, evaluate)).slice(-length);
  },
  MID: async ([value, from, count], evaluate) => {
    const start = numberOf(await evaluate(from)) - 1;
    return (await textAt(value, evaluate)).slice(start, start + (await lengthAt(count, evaluate)));
  },
  SEARCH: search,
  CONCAT: joined,
  CONCATENATE: joined,
};

function ofText(work: (text: string) => string | number): NativeCall {
  return async ([value], evaluate) => work(await textAt(value, evaluate));
}

async function textAt(node: Node, evaluate: Evaluate): Promise<string> {
  const cell = singleCell(await evaluate(node));
  return isBlank(cell) ? "" : String(cell);
}

async function lengthAt(node: Node, evaluate: Evaluate): Promise<number> {
  return node ? Math.max(0, numberOf(await evaluate(node))) : 1;
}

/** Where a text stands in another, without regard to case. */
async function search([wanted, within, from]: readonly Node[], evaluate: Evaluate): Promise<RawArgument> {
  const text = await textAt(wanted, evaluate);
  if (/[*?~]/.test(text)) throw new CannotShow(words.working.wildcard(text));
  const start = from ? numberOf(await evaluate(from)) - 1 : 0;
  const at = (await textAt(within, evaluate)).toLowerCase().indexOf(text.toLowerCase(), start);
  return at < 0 ? { code: "#VALUE!" } : at + 1;
}

async function joined(nodes: readonly Node[], evaluate: Evaluate): Promise<string> {
  return (await cellsIn(nodes, evaluate)).map((cell) => (isBlank(cell) ? "" : String(cell))).join("");
}
