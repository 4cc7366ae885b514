import { FormulaError } from "../../../core/fault";
import { breakEvenPrice } from "../../../core/money/break-even-price";
import { breakEvenYield } from "../../../core/money/break-even-yield";
import { profitGrid } from "../../../core/money/profit-grid";
import { profitOdds, type ProfitOdds } from "../../../core/risk/profit-odds";
import { roundStep } from "../../../core/round-step";
import type { ThreePoints } from "../../../core/statistics/three-point";
import { describeFault } from "../../../functions/frame/describe-fault";
import { sentence } from "../parts/text";
import type { Case } from "./case";

export interface Grid {
  readonly yields: readonly number[];
  readonly prices: readonly number[];
  readonly profits: readonly (readonly number[])[];
}

/** Profit of an acre of a case. */
export function profitOf(one: Case): number {
  return gridOf(one, [one.yieldBuPerAc], [one.priceUsdPerBu]).profits[0]?.[0] ?? 0;
}

export function gridOf(one: Case, yields: readonly number[], prices: readonly number[]): Grid {
  const grid = profitGrid({ ...one, yieldsBuPerAc: yields, pricesUsdPerBu: prices });
  return { yields, prices, profits: (grid?.profitUsdPerAc ?? []).map((row) => row.map((profit) => profit ?? 0)) };
}

const tall = 7;
const broad = 5;

/** Headings around what is tried; from lowest to highest where both are given. */
export function headings(one: Case, ranges: Ranges): Pick<Grid, "yields" | "prices"> {
  return {
    yields: around(one.yieldBuPerAc, tall, ranges.yield),
    prices: around(one.priceUsdPerBu, broad, ranges.price),
  };
}

/** Lowest and highest of what has a range, where both fit. */
export type Ranges = Readonly<Partial<Record<"yield" | "price", { readonly low: number; readonly high: number }>>>;

/** From one heading to the next. */
export function stepsOf(one: Case, ranges: Ranges): { readonly yield: number; readonly price: number } {
  return {
    yield: stepFor(one.yieldBuPerAc, tall, ranges.yield),
    price: stepFor(one.priceUsdPerBu, broad, ranges.price),
  };
}

function stepFor(middle: number, count: number, range: { low: number; high: number } | undefined): number {
  const spread = range ? Math.max(middle - range.low, range.high - middle) : middle * 0.2;
  return roundStep((spread || 1) / ((count - 1) / 2));
}

function around(middle: number, count: number, range: { low: number; high: number } | undefined): number[] {
  const half = (count - 1) / 2;
  const step = stepFor(middle, count, range);
  return Array.from({ length: count }, (_, index) =>
    Number(Math.max(0, middle + (index - half) * step).toPrecision(10)),
  ).filter((value, index, all) => index === 0 || value > (all[index - 1] ?? 0));
}

/** A number, or the sentence that says why there is none. */
export type Answer = { readonly value: number } | { readonly because: string };

export function priceToCover(one: Case): Answer {
  return answered(() => breakEvenPrice(one).priceUsdPerBu);
}

export function yieldToCover(one: Case): Answer {
  return answered(() => breakEvenYield(one).yieldBuPerAc);
}

/** The chance to cover the costs; a quantity without a range is taken as certain. */
export function oddsOf(one: Case, { yield: yields, price: prices }: Ranges): ProfitOdds | undefined {
  if (!yields && !prices) return undefined;
  const points = (likely: number, range: { low: number; high: number } | undefined): ThreePoints => ({
    low: range?.low ?? likely,
    likely,
    high: range?.high ?? likely,
  });
  const { costUsdPerAc, costUsdPerBu, otherIncomeUsdPerAc } = one;
  return profitOdds(
    {
      yieldBuPerAc: points(one.yieldBuPerAc, yields),
      priceUsdPerBu: points(one.priceUsdPerBu, prices),
      shape: "triangular",
      correlation: 0,
      costUsdPerAc,
      costUsdPerBu,
      otherIncomeUsdPerAc,
    },
    0,
  );
}

function answered(work: () => number): Answer {
  try {
    return { value: work() };
  } catch (thrown) {
    if (thrown instanceof FormulaError) return { because: sentence(describeFault(thrown.fault)) };
    throw thrown;
  }
}
