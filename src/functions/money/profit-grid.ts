import { needed } from "../../core/fault";
import { moneyLimits } from "../../core/money/money-limits";
import { profitGrid as profitGridOf, type ProfitCell } from "../../core/money/profit-grid";
import { line, quantity, worksheetFunction } from "../frame";
import { firstRunsAcross, heading } from "./heading";
import { cost, costPerBushel, otherIncome } from "./money-arguments";

export const profitGrid = worksheetFunction({
  name: "PROFITGRID",
  family: "money",
  summary: "Profit per acre for every yield and price, to set inside your own headings.",
  asks: ["profit at different prices and yields", "table of yield and price", "what if the price falls"],
  args: {
    yields: heading(quantity(moneyLimits.yield, { says: "yields" }), {
      says: "yields down the side or across the top",
    }),
    prices: heading(quantity(moneyLimits.price, { says: "prices" }), {
      says: "prices across the top or down the side",
    }),
    cost,
    otherIncome,
    costPerBushel,
  },
  returns: {
    shape: "table",
    unit: "$/ac",
    says: "profit only, without headings: it runs the way your headings run, yields down when they do not tell",
  },
  sources: ["enterprise-budget"],
  example: {
    call: [[[150], [180]], [[4, 4.5, 5]], 700],
    gives: [
      [-100, -25, 50],
      [20, 110, 200],
    ],
    because: "by hand: 150 × 4 − 700 = −100; 150 × 4.50 − 700 = −25; and so on to 180 × 5 − 700 = 200",
  },
  compute: ({ yields, prices, cost: costUsdPerAc, otherIncome: other, costPerBushel: costUsdPerBu }) => {
    const grid = profitGridOf({
      yieldsBuPerAc: yields.values,
      pricesUsdPerBu: prices.values,
      costUsdPerAc,
      otherIncomeUsdPerAc: other,
      costUsdPerBu,
    });
    const blank = yields.values.every((value) => value === null) ? "yields" : "prices";
    return needed(blank, grid);
  },
  value: (result, { yields, prices }) => {
    const body = result.profitUsdPerAc.map((row) => row.map((profit) => profit ?? ""));
    return firstRunsAcross(yields, prices) ? turned(body) : body;
  },
  working: (result) => [
    line(pairing("Best", result.best), result.best.profitUsdPerAc, "$/ac"),
    line(pairing("Worst", result.worst), result.worst.profitUsdPerAc, "$/ac"),
    line("Pairings that lose money", `${result.losingCells} of ${result.cells}`),
    line("Mind", "high yields often meet low prices: the middle of the grid is not the expected profit"),
  ],
});

function pairing(label: string, { yieldBuPerAc, priceUsdPerBu }: ProfitCell): string {
  return `${label}: ${yieldBuPerAc} bu/ac at ${priceUsdPerBu} $/bu`;
}

function turned<T>(rows: readonly (readonly T[])[]): T[][] {
  return (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] as T)); // rectangular by construction
}
