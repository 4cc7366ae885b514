import { ArrivedError } from "../../../functions/frame/arguments";
import { parseAddress, sheetAddress } from "../../../hosts/address";
import type { HostRange } from "../../../hosts/port";
import { argumentValue } from "../formula/argument-value";
import { isSame } from "./call-report";
import { CannotShow } from "../formula/cannot-show";
import { ownCalls, parseFormula } from "../formula/parse-formula";
import { rectangle, type Offset } from "../formula/rectangle";
import type { Reader } from "../formula/references";

/** How far up and to the left the formula of a cell that belongs to a larger answer is looked for. */
const mostUp = 150;
const mostLeft = 30;

/** So many formulas are tried, the nearest first. */
const mostTried = 25;

interface SpillParent {
  readonly at: HostRange;
  readonly formula: string;
  readonly offset: Offset;
}

/** The formula, above or to the left, whose answer reaches to this cell and gives what the cell shows. */
export async function spillParent(selected: HostRange, host: Reader["host"]): Promise<SpillParent | undefined> {
  const place = parseAddress(selected.address);
  if (place?.sheet === undefined) return undefined;
  const { top, left } = place.area;
  const area = { top: Math.max(0, top - mostUp), left: Math.max(0, left - mostLeft), bottom: top, right: left };
  const around = await host.read(sheetAddress(place.sheet, area));
  for (const { formula, row, column } of nearestFormulas(around).slice(0, mostTried)) {
    const offset = { row: top - area.top - row, column: left - area.left - column };
    const [down, across] = [area.top + row, area.left + column];
    const address = sheetAddress(place.sheet, { top: down, left: across, bottom: down, right: across });
    const at = { address, formulas: [[formula]], values: selected.values };
    if (await reachesTo(formula, offset, { host, selected: at })) return { at, formula, offset };
  }
  return undefined;
}

interface FormulaAt extends Offset {
  readonly formula: string;
}

/** Formulas that call a function of ours, from the cell upwards and to the left. */
function nearestFormulas({ formulas }: HostRange): readonly FormulaAt[] {
  return formulas
    .flatMap((cells, row) => cells.map((formula, column) => ({ formula, row, column })))
    .filter((cell): cell is FormulaAt => typeof cell.formula === "string" && /^=.*LOAM/i.test(cell.formula))
    .sort((a, b) => b.row + b.column - a.row - a.column);
}

async function reachesTo(formula: string, { row, column }: Offset, reader: Reader): Promise<boolean> {
  const parsed = parseFormula(formula);
  if (ownCalls(parsed).length === 0) return false;
  try {
    const cell = rectangle(await argumentValue(parsed, reader))[row]?.[column];
    return cell !== null && typeof cell !== "object" && isSame(cell, reader.selected.values[0]?.[0] ?? null);
  } catch (thrown) {
    if (thrown instanceof CannotShow || thrown instanceof ArrivedError) return false;
    throw thrown;
  }
}
