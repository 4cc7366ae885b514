import { refuseArgument, needed } from "../fault";
import type { PickRequest, YieldFactor } from "./pick-request";

/** The gain of a set of practices, and how much more could still come of others. Sets are told by place. */
export interface SetGain {
  /** Gain of the set over doing nothing, bu/ac. */
  gain(chosen: readonly number[]): number;
  /**
   * For each of the open practices the most it could add to any set made of the chosen and open ones; never below
   * what it really adds.
   */
  most(chosen: readonly number[], open: readonly number[]): readonly number[];
  /** The most that any such set could gain in all. */
  mostInAll(chosen: readonly number[], open: readonly number[]): number;
}

/** How gains come together under the interaction of a request. */
export function setGain(request: PickRequest): SetGain {
  switch (request.interaction) {
    case "additive":
      return additive(request);
    case "multiplicative":
      return product(request, (gain, current) => 1 + gain / current, currentOf(request));
    case "diminishing":
      return diminishing(request);
    case "minimum":
      return minimum(request);
  }
}

function neededBy<T>({ interaction }: PickRequest, argument: string, value: T | null): T {
  return needed(argument, value, `${interaction} gains need it`);
}

function currentOf(request: PickRequest): number {
  const current = neededBy(request, "currentYield", request.currentYieldBuPerAc);
  if (current > 0) return current;
  return refuseArgument("currentYield", "must be above 0 bu/ac to multiply.");
}

/** Σ gains + Σ extra of pairs. */
function additive({ practices, pairGains }: PickRequest): SetGain {
  const alone = practices.map(({ gainBuPerAc }) => gainBuPerAc);
  const extra = alone.map(() => alone.map(() => 0));
  for (const { first, second, extraBuPerAc } of pairGains) {
    for (const [row, column] of [[first, second] as const, [second, first] as const]) {
      const cells = extra[row];
      if (cells) cells[column] = extraBuPerAc;
    }
  }
  const between = (one: number, other: number) => extra[one]?.[other] ?? 0;
  return {
    gain: (chosen) =>
      chosen.reduce(
        (sum, one, at) =>
          sum + (alone[one] ?? 0) + chosen.slice(0, at).reduce((inner, other) => inner + between(one, other), 0),
        0,
      ),
    most: (chosen, open) =>
      open.map(
        (one, at) =>
          (alone[one] ?? 0) +
          chosen.reduce((sum, other) => sum + between(one, other), 0) +
          open.slice(0, at).reduce((sum, other) => sum + Math.max(0, between(one, other)), 0),
      ),
    mostInAll: () => Infinity,
  };
}

/** current × (Π factors - 1): each gain is a share of what is already there. */
function product(
  { practices }: PickRequest,
  factorOf: (gainBuPerAc: number, current: number) => number,
  current: number,
): SetGain {
  const factors = practices.map(({ gainBuPerAc }) => Math.max(0, factorOf(gainBuPerAc, current)));
  const of = (places: readonly number[]) => places.reduce((all, place) => all * (factors[place] ?? 1), 1);
  return {
    gain: (chosen) => current * (of(chosen) - 1),
    most(chosen, open) {
      const largest = open.reduce((all, place) => all * Math.max(1, factors[place] ?? 1), of(chosen));
      return open.map((place) => {
        const factor = factors[place] ?? 1;
        return factor > 1 ? current * (largest / factor) * (factor - 1) : 0;
      });
    },
    mostInAll: () => Infinity,
  };
}

/** gap × (1 - Π(1 - gain / gap)): each gain closes a share of what is left to gain. */
function diminishing(request: PickRequest): SetGain {
  const current = neededBy(request, "currentYield", request.currentYieldBuPerAc);
  const gap = neededBy(request, "attainableYield", request.attainableYieldBuPerAc) - current;
  for (const { name, gainBuPerAc } of request.practices) {
    if (gainBuPerAc <= gap) continue;
    const because = `${name} alone gains ${gainBuPerAc} bu/ac, more than the ${gap} between currentYield and it.`;
    refuseArgument("attainableYield", because);
  }
  const left = request.practices.map(({ gainBuPerAc }) => (gap > 0 ? 1 - gainBuPerAc / gap : 1));
  const of = (places: readonly number[]) => places.reduce((all, place) => all * (left[place] ?? 1), 1);
  return {
    gain: (chosen) => gap * (1 - of(chosen)),
    most(chosen, open) {
      // Practices that lose yield widen what is left to gain, so they count for the most that others could add.
      const widest = open.reduce((all, place) => all * Math.max(1, left[place] ?? 1), of(chosen));
      return open.map((place) => Math.max(0, gap * widest * (1 - (left[place] ?? 1))));
    },
    mostInAll: () => Infinity,
  };
}

/** The lowest ceiling after the set less the lowest today: what is not limiting adds nothing. */
function minimum(request: PickRequest): SetGain {
  const factors = neededBy(request, "ceilings", request.factors);
  const over = request.attainableYieldBuPerAc ?? Infinity;
  const gains = request.practices.map(({ gainBuPerAc }) => gainBuPerAc);
  const yieldOf = (gainIn: (factor: YieldFactor) => number) =>
    factors.reduce((lowest, factor) => Math.min(lowest, factor.ceilingBuPerAc + gainIn(factor)), over);
  const today = yieldOf(() => 0);
  const sumOver = (places: readonly number[], floor: number) => (factor: YieldFactor) =>
    factor.practices.reduce(
      (sum, place) => (places.includes(place) ? sum + Math.max(floor, gains[place] ?? 0) : sum),
      0,
    );
  return {
    gain: (chosen) => yieldOf(sumOver(chosen, -Infinity)) - today,
    // The lowest of several ceilings rises by no more than the one that is raised.
    most: (_, open) => open.map((place) => Math.max(0, gains[place] ?? 0)),
    mostInAll(chosen, open) {
      const reached = sumOver(chosen, -Infinity);
      const reachable = sumOver(open, 0);
      return yieldOf((factor) => reached(factor) + reachable(factor)) - today;
    },
  };
}
