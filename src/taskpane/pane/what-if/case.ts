import { words } from "../../words";
import { numberIn, readNumber, type Read } from "../parts/read-number";
import { quantities, quantityFacts, type Quantity } from "./quantities";
import type { WhatIfState } from "./state";

const say = words.whatIf;

/** One acre with figures to reckon with. */
export interface Case {
  readonly yieldBuPerAc: number;
  readonly priceUsdPerBu: number;
  readonly costUsdPerAc: number;
  readonly costUsdPerBu: number;
  readonly otherIncomeUsdPerAc: number;
  readonly acres: number | null;
}

/** What is tried for a quantity, as text: typed, or what the sheet says. */
export function textOf({ kept, bound }: WhatIfState, quantity: Quantity): string {
  const value = bound[quantity]?.value;
  return kept.typed[quantity] ?? (value === undefined || value === null ? "" : plain(value));
}

export function readQuantity(state: WhatIfState, quantity: Quantity): Read {
  const read = readNumber(say.names[quantity], textOf(state, quantity), quantityFacts[quantity].limit);
  const { whenBlank } = quantityFacts[quantity];
  return read === "blank" && whenBlank !== undefined ? { value: whenBlank } : read;
}

/** The numbers that are tried, as far as they can be read. */
export function valuesOf(state: WhatIfState): Partial<Record<Quantity, number>> {
  return Object.fromEntries(
    quantities.flatMap((quantity) => {
      const value = numberIn(readQuantity(state, quantity));
      return value === undefined ? [] : [[quantity, value] as const];
    }),
  );
}

/** The case of a set of numbers; nothing while one that has to be known is missing. */
export function caseFrom(values: Readonly<Partial<Record<Quantity, number>>>): Case | undefined {
  const { yield: yieldBuPerAc, price, cost, perBushel = 0, other = 0, acres } = values;
  if (yieldBuPerAc === undefined || price === undefined || cost === undefined) return undefined;
  return {
    yieldBuPerAc,
    priceUsdPerBu: price,
    costUsdPerAc: cost,
    costUsdPerBu: perBushel,
    otherIncomeUsdPerAc: other,
    acres: acres ?? null,
  };
}

/** A number as a person would type it, without the dust of binary fractions. */
export function plain(value: number): string {
  return String(Number(value.toPrecision(10)));
}
