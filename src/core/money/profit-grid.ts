import { refuseArgument } from "../fault";
import { within } from "../limit";
import { moneyLimits } from "./money-limits";

export interface ProfitGridInput {
  /** null keeps the place of a blank cell. */
  readonly yieldsBuPerAc: readonly (number | null)[];
  readonly pricesUsdPerBu: readonly (number | null)[];
  readonly costUsdPerAc: number;
  readonly otherIncomeUsdPerAc: number;
  readonly costUsdPerBu: number;
}

export interface ProfitGrid {
  /** $/ac, a row for each yield and a column for each price; null where either is blank. */
  readonly profitUsdPerAc: readonly (readonly (number | null)[])[];
  readonly best: ProfitCell;
  readonly worst: ProfitCell;
  readonly cells: number;
  readonly losingCells: number;
}

export interface ProfitCell {
  readonly yieldBuPerAc: number;
  readonly priceUsdPerBu: number;
  readonly profitUsdPerAc: number;
}

/** As many as 200 yields at 200 prices: more is a slip, such as a whole column, and nobody reads it. */
const mostCells = 40_000;

/**
 * Profit at every pairing of yields and prices.
 *
 *   yield × (price - cost per bushel) + other income - cost
 *
 * Expected profit is not the average of such a grid: high yields often meet low prices.
 *
 * @source enterprise-budget
 */
export function profitGrid(input: ProfitGridInput): ProfitGrid | null {
  check(input);
  const grid = input.yieldsBuPerAc.map((yieldBuPerAc) =>
    input.pricesUsdPerBu.map((priceUsdPerBu) => cellAt(yieldBuPerAc, priceUsdPerBu, input)),
  );
  const cells = grid.flat().filter((cell) => cell !== null);
  const [first] = cells;
  if (first === undefined) return null;
  return {
    profitUsdPerAc: grid.map((row) => row.map((cell) => cell?.profitUsdPerAc ?? null)),
    best: cells.reduce((most, cell) => (cell.profitUsdPerAc > most.profitUsdPerAc ? cell : most), first),
    worst: cells.reduce((least, cell) => (cell.profitUsdPerAc < least.profitUsdPerAc ? cell : least), first),
    cells: cells.length,
    losingCells: cells.filter((cell) => cell.profitUsdPerAc < 0).length,
  };
}

function cellAt(
  yieldBuPerAc: number | null,
  priceUsdPerBu: number | null,
  { costUsdPerAc, otherIncomeUsdPerAc, costUsdPerBu }: ProfitGridInput,
): ProfitCell | null {
  if (yieldBuPerAc === null || priceUsdPerBu === null) return null;
  const profitUsdPerAc = yieldBuPerAc * (priceUsdPerBu - costUsdPerBu) + otherIncomeUsdPerAc - costUsdPerAc;
  return { yieldBuPerAc, priceUsdPerBu, profitUsdPerAc };
}

function check(input: ProfitGridInput): void {
  const cells = input.yieldsBuPerAc.length * input.pricesUsdPerBu.length;
  if (cells > mostCells) {
    const because = `with the yields given they make ${cells.toLocaleString("en-US")} pairings; at most ${mostCells.toLocaleString("en-US")} fit.`;
    refuseArgument("prices", because);
  }
  for (const yieldBuPerAc of input.yieldsBuPerAc) {
    if (yieldBuPerAc !== null) within("yields", yieldBuPerAc, moneyLimits.yield);
  }
  for (const priceUsdPerBu of input.pricesUsdPerBu) {
    if (priceUsdPerBu !== null) within("prices", priceUsdPerBu, moneyLimits.price);
  }
  within("cost", input.costUsdPerAc, moneyLimits.costPerAc);
  within("otherIncome", input.otherIncomeUsdPerAc, moneyLimits.otherIncome);
  within("costPerBushel", input.costUsdPerBu, moneyLimits.costPerBushel);
}
