import type { RawArgument } from "../../../functions/frame/cell";
import { ArrivedError } from "../../../functions/frame/arguments";
import { HostError } from "../../../hosts/port";
import type { CellPlace } from "../../../workbook/area";
import { callsToRead, type CallReading, type WorkbookReading } from "../../../workbook/findings";
import { cellsWhere, isFormula } from "../../../workbook/findings/reading/sheet-cells";
import { argumentValue } from "../formula/argument-value";
import { CannotShow } from "../formula/cannot-show";
import { ownCalls, parseFormula, type OwnCall } from "../formula/parse-formula";
import { Snapshot } from "./snapshot";

const wanted = new RegExp(`[._](?:${[...callsToRead].join("|")})\\(`, "i");

/** The calls that findings want to know more of, with what their arguments are worth; those that cannot be read are left out. */
export async function callsIn(reading: WorkbookReading): Promise<readonly CallReading[]> {
  const snapshot = new Snapshot(reading);
  const found: CallReading[] = [];
  for (const sheet of reading.sheets) {
    const calling = cellsWhere(sheet, (content) => isFormula(content) && wanted.test(content));
    for (const { content, row, column } of calling) {
      for (const call of ownCalls(parseFormula(String(content)))) {
        const at = { sheet: sheet.name, row, column };
        const read = callsToRead.has(call.fn.name) ? await readCall(call, at, snapshot) : undefined;
        if (read) found.push(read);
      }
    }
  }
  return found;
}

async function readCall({ fn, node }: OwnCall, at: CellPlace, snapshot: Snapshot): Promise<CallReading | undefined> {
  const selected = await snapshot.select(at).readSelection();
  const given: Record<string, RawArgument> = {};
  try {
    for (const [index, name] of Object.keys(fn.args).entries()) {
      const written = node.arguments[index];
      if (written) given[name] = await argumentValue(written, { host: snapshot, selected });
    }
  } catch (thrown) {
    if (thrown instanceof CannotShow || thrown instanceof HostError || thrown instanceof ArrivedError) return undefined;
    throw thrown;
  }
  return { name: fn.name, at, given };
}
