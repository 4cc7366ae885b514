import fc from "fast-check";
import { solve } from "yalps";
import type { Interaction, PickRequest } from "../../../src/core/practices/pick-request";
import { practicePick } from "../../../src/core/practices/practice-pick";
import { pickRequest } from "./pick-cases";

const currentYield = 160;
const attainableYield = 240;

/** The gain of a set, written anew from the definitions. */
function gainOf(set: readonly number[], request: PickRequest): number {
  const gain = (place: number) => request.practices[place]?.gainBuPerAc ?? NaN;
  switch (request.interaction) {
    case "additive": {
      const pairs = request.pairGains.filter(({ first, second }) => set.includes(first) && set.includes(second));
      return set.reduce((sum, place) => sum + gain(place), 0) + pairs.reduce((sum, pair) => sum + pair.extraBuPerAc, 0);
    }
    case "multiplicative":
      return currentYield * set.reduce((all, place) => all * (1 + gain(place) / currentYield), 1) - currentYield;
    case "diminishing": {
      const gap = attainableYield - currentYield;
      return gap - gap * set.reduce((all, place) => all * (1 - gain(place) / gap), 1);
    }
    case "minimum": {
      const factors = request.factors ?? [];
      const today = Math.min(...factors.map(({ ceilingBuPerAc }) => ceilingBuPerAc));
      const after = factors.map(({ ceilingBuPerAc, practices }) =>
        practices.filter((place) => set.includes(place)).reduce((sum, place) => sum + gain(place), ceilingBuPerAc),
      );
      return Math.min(...after) - today;
    }
  }
}

function isAllowed(set: readonly number[], request: PickRequest): boolean {
  const cost = set.reduce((sum, place) => sum + (request.practices[place]?.costUsdPerAc ?? NaN), 0);
  return (
    cost <= request.budgetUsdPerAc &&
    set.length <= (request.mostPractices ?? Infinity) &&
    !request.excludes.some(([one, other]) => set.includes(one) && set.includes(other)) &&
    request.requires.every(([one, other]) => !set.includes(one) || set.includes(other))
  );
}

/** Every set, looked at. */
function bestByTrying(request: PickRequest): number {
  const count = request.practices.length;
  let best = 0;
  for (let bits = 0; bits < 2 ** count; bits++) {
    const set = Array.from({ length: count }, (_, place) => place).filter((place) => bits & (1 << place));
    if (!isAllowed(set, request)) continue;
    const cost = set.reduce((sum, place) => sum + (request.practices[place]?.costUsdPerAc ?? NaN), 0);
    best = Math.max(best, request.priceUsdPerBu * gainOf(set, request) - cost);
  }
  return best;
}

function requests(interaction: Interaction, most: number): fc.Arbitrary<PickRequest> {
  return fc.integer({ min: 1, max: most }).chain((count) => {
    const place = fc.integer({ min: 0, max: count - 1 });
    const pair = fc.tuple(place, place).filter(([one, other]) => one !== other);
    const pairs = fc.array(pair, { maxLength: count > 1 ? 3 : 0 });
    return fc
      .record({
        costs: fc.array(fc.integer({ min: 0, max: 40 }), { minLength: count, maxLength: count }),
        gains: fc.array(fc.integer({ min: -20, max: 150 }), { minLength: count, maxLength: count }),
        budgetUsdPerAc: fc.integer({ min: 0, max: 150 }),
        mostPractices: fc.option(fc.integer({ min: 0, max: count })),
        excludes: pairs,
        requires: pairs,
        extras: fc.array(fc.tuple(pair, fc.integer({ min: -40, max: 40 })), { maxLength: count > 1 ? 4 : 0 }),
        ceilings: fc.array(fc.integer({ min: 140, max: 190 }), { minLength: 3, maxLength: 3 }),
      })
      .map(({ costs, gains, ceilings, extras, ...rest }) => {
        const seen = new Set<string>();
        return pickRequest(
          costs.map((cost, index) => [`p${index}`, cost, (gains[index] ?? 0) / 10] as const),
          {
            ...rest,
            interaction,
            currentYieldBuPerAc: currentYield,
            attainableYieldBuPerAc: interaction === "minimum" ? null : attainableYield,
            factors: ceilings.map((ceilingBuPerAc, factor) => ({
              name: `f${factor}`,
              ceilingBuPerAc,
              practices: costs.map((_, index) => index).filter((index) => index % 3 === factor),
            })),
            pairGains:
              interaction !== "additive"
                ? []
                : extras.flatMap(([[one, other], extra]) => {
                    const [first, second] = [Math.min(one, other), Math.max(one, other)];
                    if (seen.has(`${first} ${second}`)) return [];
                    seen.add(`${first} ${second}`);
                    return [{ first, second, extraBuPerAc: extra / 10 }];
                  }),
          },
        );
      });
  });
}

/** The same choice as a program of zeros and ones; a pair's extra is had when both of the pair are taken. */
function bestByProgram(request: PickRequest): number {
  const { practices, priceUsdPerBu, pairGains, excludes, requires } = request;
  const constraints: [string, { min?: number; max?: number }][] = [
    ["budget", { max: request.budgetUsdPerAc }],
    ["number", { max: request.mostPractices ?? practices.length }],
  ];
  const columns = practices.map(({ costUsdPerAc, gainBuPerAc }) => [
    ["net", priceUsdPerBu * gainBuPerAc - costUsdPerAc] as [string, number],
    ["budget", costUsdPerAc] as [string, number],
    ["number", 1] as [string, number],
  ]);
  const row = (name: string, bound: { min?: number; max?: number }, parts: readonly (readonly [number, number])[]) => {
    constraints.push([name, bound]);
    for (const [column, factor] of parts) columns[column]?.push([name, factor]);
  };
  excludes.forEach(([one, other], index) =>
    row(`not ${index}`, { max: 1 }, [
      [one, 1],
      [other, 1],
    ]),
  );
  requires.forEach(([one, other], index) =>
    row(`needs ${index}`, { max: 0 }, [
      [one, 1],
      [other, -1],
    ]),
  );
  for (const { first, second, extraBuPerAc } of pairGains) {
    const both = columns.push([["net", priceUsdPerBu * extraBuPerAc]]) - 1;
    row(`${both} first`, { max: 0 }, [
      [both, 1],
      [first, -1],
    ]);
    row(`${both} second`, { max: 0 }, [
      [both, 1],
      [second, -1],
    ]);
    row(`${both} both`, { min: -1 }, [
      [both, 1],
      [first, -1],
      [second, -1],
    ]);
  }
  const { status, result } = solve(
    {
      direction: "maximize",
      objective: "net",
      constraints,
      variables: columns.map((column, index) => [String(index), column] as const),
      binaries: true,
    },
    { tolerance: 0, timeout: Infinity, maxIterations: Infinity },
  );
  expect(status).toBe("optimal");
  return result;
}

test("additive gains of up to 20 practices net as much as an integer-program library finds", () => {
  fc.assert(
    fc.property(requests("additive", 20), (request) => {
      expect(practicePick(request).netUsdPerAc).toBeCloseTo(bestByProgram(request), 6);
    }),
    { numRuns: 60 },
  );
});

describe.each<[Interaction]>([["additive"], ["multiplicative"], ["diminishing"], ["minimum"]])("%s", (interaction) => {
  it("nets as much as the best of all sets, up to 12 practices", () => {
    fc.assert(
      fc.property(requests(interaction, 9), (request) => {
        expect(practicePick(request).netUsdPerAc).toBeCloseTo(bestByTrying(request), 6);
      }),
      { numRuns: 150 },
    );
    fc.assert(
      fc.property(requests(interaction, 12), (request) => {
        expect(practicePick(request).netUsdPerAc).toBeCloseTo(bestByTrying(request), 6);
      }),
      { numRuns: 8 },
    );
  });
  it("keeps every rule and reports its own net", () => {
    fc.assert(
      fc.property(requests(interaction, 12), (request) => {
        const pick = practicePick(request);
        const set = pick.practices.flatMap(({ isPicked }, place) => (isPicked ? [place] : []));
        expect(isAllowed(set, request)).toBe(true);
        expect(pick.gainBuPerAc).toBeCloseTo(gainOf(set, request), 8);
        expect(pick.netUsdPerAc).toBeCloseTo(request.priceUsdPerBu * pick.gainBuPerAc - pick.costUsdPerAc, 8);
      }),
    );
  });
  it("never falls with a larger budget", () => {
    fc.assert(
      fc.property(requests(interaction, 8), fc.integer({ min: 0, max: 60 }), (request, more) => {
        const larger = { ...request, budgetUsdPerAc: request.budgetUsdPerAc + more };
        expect(practicePick(larger).netUsdPerAc).toBeGreaterThanOrEqual(practicePick(request).netUsdPerAc - 1e-8);
      }),
    );
  });
});
