import type { Limit } from "../../../core/limit";
import { moneyLimits } from "../../../core/money/money-limits";

/** What can be tried, in the order of the pane. */
export const quantities = ["yield", "price", "cost", "perBushel", "other", "acres"] as const;

export type Quantity = (typeof quantities)[number];

interface QuantityFacts {
  readonly limit: Limit;
  /** How its cell is named in a starter, after the starter's own word: quick_per_bushel. */
  readonly named: string;
  readonly hasSlider: boolean;
  /** Moves profit, so that a lowest and a highest can be asked for. */
  readonly hasRange: boolean;
  /** Taken when nothing is typed and no cell is tied; none for what has to be known. */
  readonly whenBlank?: number;
}

export const quantityFacts: Readonly<Record<Quantity, QuantityFacts>> = {
  yield: { limit: moneyLimits.yield, named: "yield", hasSlider: true, hasRange: true },
  price: { limit: moneyLimits.price, named: "price", hasSlider: true, hasRange: true },
  cost: { limit: moneyLimits.costPerAc, named: "cost", hasSlider: true, hasRange: true },
  perBushel: { limit: moneyLimits.costPerBushel, named: "per_bushel", hasSlider: false, hasRange: true, whenBlank: 0 },
  other: { limit: moneyLimits.otherIncome, named: "other", hasSlider: false, hasRange: true, whenBlank: 0 },
  acres: { limit: { ...moneyLimits.acres, unit: "ac" }, named: "acres", hasSlider: false, hasRange: false },
};

export function isQuantity(text: string): text is Quantity {
  return quantities.some((one) => one === text);
}

interface SliderScale {
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

/**
 * A slider from half to one and a half times the sheet's value on round steps, wide enough for what is typed.
 *
 * @param base what the sheet says, or what is typed where no cell is tied
 */
export function sliderScale(base: number, shown: number, { limit }: QuantityFacts): SliderScale {
  const middle = base > 0 ? base : Math.max(shown, 1);
  const step = roundDown(middle / 100);
  const onStep = (value: number, round: (value: number) => number) => clean(round(clean(value / step)) * step);
  const min = onStep(Math.max(limit.min, Math.min(middle * 0.5, shown)), Math.floor);
  const max = onStep(Math.min(limit.max, Math.max(middle * 1.5, shown)), Math.ceil);
  return { min, max, step };
}

/** The nearest of 1, 2 or 5 times a power of ten that is not above the value. */
function roundDown(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value) + 1e-9);
  const factor = [5, 2, 1].find((candidate) => candidate * power <= value * (1 + 1e-9)) ?? 1;
  return clean(factor * power);
}

function clean(value: number): number {
  return Number(value.toPrecision(12));
}
