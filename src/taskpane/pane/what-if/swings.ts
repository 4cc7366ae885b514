import { moneyLimits } from "../../../core/money/money-limits";
import { words } from "../../words";
import { amountText } from "../number-text";
import { numberIn, readNumber, refusalIn } from "../parts/read-number";
import type { SwingRange, TriedFigure } from "../../../workbook/pictures/picture";
import type { Swing } from "../charts/tornado";
import { caseFrom, valuesOf, type Case } from "./case";
import { profitOf, type Ranges } from "./profit";
import { quantities, quantityFacts, type Quantity } from "./quantities";
import type { CostLine, WhatIfState } from "./state";

const say = words.whatIf;

export type End = "low" | "high";

interface RangeReading {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly refusal?: string | undefined;
}

/** Lowest and highest of a quantity as typed, and what does not fit in them. */
export function rangeOf(state: WhatIfState, quantity: Quantity): RangeReading {
  const { limit } = quantityFacts[quantity];
  const likely = valuesOf(state)[quantity];
  const read = (end: End) =>
    readNumber(
      end === "low" ? say.lowOf(say.names[quantity]) : say.highOf(say.names[quantity]),
      state.kept.ranges[`${quantity}.${end}`] ?? "",
      limit,
    );
  const [low, high] = [read("low"), read("high")];
  const ends = { low: numberIn(low), high: numberIn(high) };
  return {
    ...ends,
    refusal: refusalIn(low) ?? refusalIn(high) ?? outOfOrder(say.names[quantity], { ...ends, likely }, limit.unit),
  };
}

interface Ends {
  readonly low: number | undefined;
  readonly likely: number | undefined;
  readonly high: number | undefined;
}

function outOfOrder(name: string, { low, likely, high }: Ends, unit: string): string | undefined {
  if (low === undefined || likely === undefined || high === undefined) return undefined;
  if (low <= likely && likely <= high) return undefined;
  return say.rangeOrder(name, amountText(low, unit), amountText(likely, unit), amountText(high, unit));
}

/** The ranges of yield and price that fit. */
export function rangesOf(state: WhatIfState): Ranges {
  const whole = (quantity: "yield" | "price") => {
    const { low, high, refusal } = rangeOf(state, quantity);
    return refusal === undefined && low !== undefined && high !== undefined ? { [quantity]: { low, high } } : {};
  };
  return { ...whole("yield"), ...whole("price") };
}

/** Profit at the lowest and at the highest of each range, all else as tried; the widest first. */
export function swingsOf(state: WhatIfState): Swing[] {
  const values = valuesOf(state);
  const swings = [
    ...quantities
      .filter((quantity) => quantityFacts[quantity].hasRange)
      .flatMap((quantity) => {
        const { low, high, refusal } = rangeOf(state, quantity);
        if (refusal !== undefined || low === undefined || high === undefined) return [];
        const at = (value: number) => caseFrom({ ...values, [quantity]: value });
        return moves(quantity) ? swing({ name: say.names[quantity], moves: quantity, low, high }, at) : [];
      }),
    ...state.kept.lines.flatMap((line) => lineSwing(line, values)),
  ];
  return swings.sort((one, other) => width(other) - width(one));
}

/** All that can have a range stands in the picture. */
function moves(quantity: Quantity): quantity is TriedFigure {
  return quantity !== "acres";
}

function swing(range: SwingRange, at: (value: number) => Case | undefined): Swing[] {
  const [lowCase, highCase] = [at(range.low), at(range.high)];
  if (!lowCase || !highCase) return [];
  const { unit } = typeof range.moves === "string" ? quantityFacts[range.moves].limit : moneyLimits.costPerAc;
  return [{ ...range, unit, atLow: profitOf(lowCase), atHigh: profitOf(highCase) }];
}

/** The costs with one of their parts at another amount. */
function lineSwing(line: CostLine, values: Partial<Record<Quantity, number>>): Swing[] {
  const { planned, low, high, refusal } = readLine(line);
  const { cost } = values;
  if (refusal !== undefined || planned === undefined || low === undefined || high === undefined || cost === undefined)
    return [];
  const at = (value: number) => caseFrom({ ...values, cost: Math.max(0, cost - planned + value) });
  return swing({ name: line.name.trim() || say.lineName, moves: { planned }, low, high }, at);
}

interface LineReading extends RangeReading {
  readonly planned?: number | undefined;
}

export function readLine({ name, ...texts }: CostLine): LineReading {
  const called = name.trim() || say.lineName;
  const read = (text: string) => readNumber(called, text, moneyLimits.costPerAc);
  const [planned, low, high] = [read(texts.planned), read(texts.low), read(texts.high)];
  const numbers = { planned: numberIn(planned), low: numberIn(low), high: numberIn(high) };
  const order = outOfOrder(called, { ...numbers, likely: numbers.planned }, moneyLimits.costPerAc.unit);
  return { ...numbers, refusal: refusalIn(planned) ?? refusalIn(low) ?? refusalIn(high) ?? order };
}

function width({ atLow, atHigh }: Swing): number {
  return Math.abs(atHigh - atLow);
}
