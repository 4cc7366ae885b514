import fc from "fast-check";
import { blockTrial } from "../../../src/core/trials/block-trial";
import { normalCdf } from "../../../src/core/statistics/normal";
import { chanceOfBest } from "../../../src/core/trials/chance-of-best";
import { holmAdjusted } from "../../../src/core/trials/holm";
import { meanLetters } from "../../../src/core/trials/mean-letters";
import { pairedGain } from "../../../src/core/trials/paired-gain";
import { trialAddUp } from "../../../src/core/trials/trial-add-up";
import { trialLayout } from "../../../src/core/trials/trial-layout";
import { trialPool } from "../../../src/core/trials/trial-pool";
import { blockPower, pairPower, trialPower, trialSize } from "../../../src/core/trials/trial-power";
import { trialTrend } from "../../../src/core/trials/trial-trend";
import { varietyMeans } from "../../../src/core/trials/variety-means";

// Yields and gains of field crops, to a tenth of a bushel.
const bushels = fc.integer({ min: 200, max: 2600 }).map((tenths) => tenths / 10);
const gains = fc.integer({ min: -300, max: 300 }).map((tenths) => tenths / 10);
const errors = fc.integer({ min: 5, max: 80 }).map((tenths) => tenths / 10);

interface TrialRow {
  readonly treatment: string;
  readonly block: string;
  readonly yieldBuPerAc: number;
}

/** A trial of 2 to 5 treatments in 3 to 6 blocks, every strip harvested and the yields not all alike. */
const trials = fc.tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 3, max: 6 })).chain(([treatments, blocks]) =>
  fc
    .array(bushels, { minLength: treatments * blocks, maxLength: treatments * blocks })
    .filter((yields) => new Set(yields).size > yields.length / 2)
    .map((yields) =>
      yields.map((yieldBuPerAc, index): TrialRow => ({
        treatment: `t${index % treatments}`,
        block: `b${Math.floor(index / treatments)}`,
        yieldBuPerAc,
      })),
    ),
);

/** A trial, and the same strips in any other order. */
const shuffledTrials = trials.chain((rows) =>
  fc.tuple(fc.constant(rows), fc.shuffledSubarray([...rows], { minLength: rows.length, maxLength: rows.length })),
);

function analysed(rows: readonly TrialRow[]) {
  return blockTrial({
    treatments: rows.map(({ treatment }) => treatment),
    blocks: rows.map(({ block }) => block),
    yields: rows.map(({ yieldBuPerAc }) => yieldBuPerAc),
    confidencePct: 90,
    check: "t0",
  });
}

describe("trialLayout", () => {
  const treatments = ["check", "early", "late"];
  const orderOf = (layout: ReturnType<typeof trialLayout>, block: number) =>
    layout.filter((strip) => strip.block === block).map(({ treatment }) => treatment);

  it("holds every treatment once in every block, and not all blocks in one order", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), fc.integer({ min: 2, max: 8 }), (seed, blocks) => {
        const layout = trialLayout({ treatments, blocks, seed, design: "blocks" });
        const orders = Array.from({ length: blocks }, (_, index) => orderOf(layout, index + 1));
        for (const order of orders) expect([...order].sort()).toEqual(treatments);
        expect(new Set(orders.map(String)).size).toBeGreaterThan(1);
        expect(layout.map(({ strip }) => strip)).toEqual(layout.map((_, index) => index + 1));
      }),
    );
  });
  it("favours no treatment: over 3,000 seeds each stands a third of the time in each place of each block", () => {
    const counts = new Map<string, number>();
    for (let seed = 0; seed < 3000; seed++) {
      trialLayout({ treatments, blocks: 2, seed, design: "blocks" }).forEach(({ treatment }, place) => {
        const key = `${place} ${treatment}`;
        counts.set(key, (counts.get(key) ?? 0) + 1);
      });
    }
    expect(counts.size).toBe(18);
    // 1,000 expected, SD √(3000 · 1/3 · 2/3) = 25.8; four of them are passed once in fifteen thousand.
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(104);
  });
  it("draws pairs fairly: over 2,000 seeds each side of each pair is the check's half of the time", () => {
    const lefts = [0, 0, 0, 0];
    for (let seed = 0; seed < 2000; seed++) {
      const layout = trialLayout({ treatments: ["check", "treated"], blocks: 4, seed, design: "pairs" });
      lefts.forEach((_, pair) => {
        expect([layout[2 * pair]?.treatment, layout[2 * pair + 1]?.treatment].sort()).toEqual(["check", "treated"]);
        if (layout[2 * pair]?.treatment === "check") lefts[pair] = (lefts[pair] ?? 0) + 1;
      });
    }
    // SD √(2000 / 4) = 22.4
    for (const left of lefts) expect(Math.abs(left - 1000)).toBeLessThan(90);
  });
  it("turns a split planter at every end, either half carrying the treatment equally often", () => {
    let checkFirst = 0;
    for (let seed = 0; seed < 1000; seed++) {
      const layout = trialLayout({ treatments: ["check", "treated"], blocks: 4, seed, design: "splitPlanter" });
      const first = orderOf(layout, 1);
      expect(orderOf(layout, 2)).toEqual([...first].reverse());
      expect(orderOf(layout, 3)).toEqual(first);
      if (first[0] === "check") checkFirst++;
    }
    // SD √(1000 / 4) = 15.8
    expect(Math.abs(checkFirst - 500)).toBeLessThan(64);
  });
});

describe("blockTrial", () => {
  it("does not care in which order the strips are listed", () => {
    fc.assert(
      fc.property(shuffledTrials, ([rows, shuffled]) => {
        const [first, second] = [analysed(rows), analysed(shuffled)];
        expect(second.f).toBeCloseTo(first.f, 7);
        expect(second.cvPct).toBeCloseTo(first.cvPct, 8);
        expect(second.tukeyDifference ?? NaN).toBeCloseTo(first.tukeyDifference ?? NaN, 8);
        for (const { treatment, mean, letters, againstCheck } of first.treatments) {
          const same = second.treatments.find((other) => other.treatment === treatment);
          expect(same?.mean).toBeCloseTo(mean, 8);
          expect(same?.letters).toBe(letters);
          expect(same?.againstCheck?.low ?? 0).toBeCloseTo(againstCheck?.low ?? 0, 7);
          expect(same?.againstCheck?.chance ?? 0).toBeCloseTo(againstCheck?.chance ?? 0, 8);
        }
      }),
      { numRuns: 30 },
    );
  });
  it("sees no more in a better block: a shift of one block changes no gain", () => {
    fc.assert(
      fc.property(trials, gains, (rows, shift) => {
        const moved = rows.map((row) =>
          row.block === "b1" ? { ...row, yieldBuPerAc: row.yieldBuPerAc + shift } : row,
        );
        const [first, second] = [analysed(rows), analysed(moved)];
        first.treatments.forEach(({ againstCheck, treatment }) => {
          const same = second.treatments.find((other) => other.treatment === treatment);
          expect(same?.againstCheck?.low ?? 0).toBeCloseTo(againstCheck?.low ?? 0, 7);
        });
      }),
      { numRuns: 15 },
    );
  });
  it("with two treatments is the analysis of pairs", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(bushels, bushels), { minLength: 3, maxLength: 8 }), (pairs) => {
        fc.pre(new Set(pairs.map(([check, treated]) => (treated - check).toFixed(1))).size > 1);
        const paired = pairedGain({
          check: pairs.map(([check]) => check),
          treated: pairs.map(([, treated]) => treated),
          confidencePct: 90,
        });
        const rows = pairs.flatMap(([check, treated], index) => [
          { treatment: "t0", block: `b${index}`, yieldBuPerAc: check },
          { treatment: "t1", block: `b${index}`, yieldBuPerAc: treated },
        ]);
        const treated = analysed(rows).treatments.find(({ treatment }) => treatment === "t1");
        expect(treated?.againstCheck).toMatchObject({
          gain: expect.closeTo(paired.gain, 8),
          standardError: expect.closeTo(paired.standardError, 8),
          low: expect.closeTo(paired.low, 6),
          chance: expect.closeTo(paired.chance, 8),
        });
      }),
      { numRuns: 15 },
    );
  });
});

test("pairs say the same in any order, and the other way round when check and treated change places", () => {
  const pairs = fc
    .array(fc.tuple(bushels, bushels), { minLength: 2, maxLength: 9 })
    .filter((list) => new Set(list.map(([check, treated]) => (treated - check).toFixed(1))).size > 1);
  const bothOrders = pairs.chain((list) =>
    fc.tuple(fc.constant(list), fc.shuffledSubarray([...list], { minLength: list.length, maxLength: list.length })),
  );
  const gainOf = (list: readonly (readonly [number, number])[]) =>
    pairedGain({
      check: list.map(([check]) => check),
      treated: list.map(([, treated]) => treated),
      confidencePct: 90,
    });
  fc.assert(
    fc.property(bothOrders, ([list, shuffled]) => {
      const [first, second, turned] = [
        gainOf(list),
        gainOf(shuffled),
        gainOf(list.map(([check, treated]) => [treated, check] as const)),
      ];
      for (const key of ["gain", "standardError", "low", "high", "chance"] as const)
        expect(second[key]).toBeCloseTo(first[key], 8);
      expect(turned.gain).toBeCloseTo(-first.gain, 8);
      expect(turned.low).toBeCloseTo(-first.high, 8);
      expect(turned.chance).toBeCloseTo(first.chance, 8);
    }),
  );
});

test("two means share a letter exactly when they are not apart", () => {
  const sizes = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 2, maxLength: 9 });
  fc.assert(
    fc.property(sizes, fc.integer({ min: 1, max: 20 }), (means, needed) => {
      const differ = (a: number, b: number) => Math.abs((means[a] ?? 0) - (means[b] ?? 0)) > needed;
      const order = means.map((_, index) => index).sort((a, b) => (means[b] ?? 0) - (means[a] ?? 0));
      const letters = meanLetters(order, differ);
      for (const a of order) {
        for (const b of order) {
          const shares = [...(letters[a] ?? "")].some((letter) => letters[b]?.includes(letter));
          expect(shares).toBe(!differ(a, b));
        }
      }
      expect(letters[order[0] ?? 0]).toContain("a");
    }),
  );
});

test("Holm never lowers a chance, keeps their order, and leaves a single one alone", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 9 }), (chances) => {
      const adjusted = holmAdjusted(chances);
      chances.forEach((chance, index) => {
        expect(adjusted[index]).toBeGreaterThanOrEqual(chance);
        chances.forEach((other, place) => {
          if (other >= chance) expect(adjusted[place]).toBeGreaterThanOrEqual(adjusted[index] ?? 0);
        });
      });
      if (chances.length === 1) expect(adjusted).toEqual(chances);
    }),
  );
});

describe("trialSize", () => {
  it("is the first number of blocks that is enough", () => {
    // Down to a gain of a quarter SD; smaller ones may need more blocks than the function allows.
    const plans = fc.record({
      gainBuPerAc: fc.double({ min: 2, max: 20, noNaN: true }),
      stripSdBuPerAc: fc.double({ min: 1, max: 8, noNaN: true }),
      confidencePct: fc.constantFrom(80, 90, 95),
      treatments: fc.integer({ min: 2, max: 6 }),
    });
    fc.assert(
      fc.property(plans, fc.constantFrom(70, 80, 90), (plan, powerPct) => {
        const { blocks, powerPct: reached } = trialSize(plan, powerPct);
        expect(reached).toBeGreaterThanOrEqual(powerPct);
        if (blocks > 2) expect(trialPower(plan, blocks - 1).powerPct).toBeLessThan(powerPct);
      }),
      { numRuns: 60 },
    );
  });
  it("sees pairs by t as by F", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 6, noNaN: true }), fc.integer({ min: 1, max: 40 }), (shift, df) => {
        expect(pairPower(shift, df, 90)).toBeCloseTo(blockPower(shift * shift, 1, df, 90), 8);
      }),
      { numRuns: 40 },
    );
  });
});

describe("trialPool", () => {
  it("does not care in which order the fields are listed", () => {
    const lists = fc.array(fc.tuple(gains, errors), { minLength: 3, maxLength: 9 });
    const bothOrders = lists.chain((list) =>
      fc.tuple(fc.constant(list), fc.shuffledSubarray([...list], { minLength: list.length, maxLength: list.length })),
    );
    const pooled = (list: readonly (readonly [number, number])[]) =>
      trialPool({
        gains: list.map(([gain]) => gain),
        standardErrors: list.map(([, error]) => error),
        confidencePct: 90,
      });
    fc.assert(
      fc.property(bothOrders, ([list, shuffled]) => {
        const [first, second] = [pooled(list), pooled(shuffled)];
        for (const key of ["gain", "low", "high", "betweenSd", "q"] as const)
          expect(second[key]).toBeCloseTo(first[key], 6);
      }),
    );
  });
  const fields = fc.array(fc.tuple(gains, errors), { minLength: 2, maxLength: 9 });
  it("lies between the smallest and the largest gain, inside its own range, inside that of a new field", () => {
    fc.assert(
      fc.property(fields, (list) => {
        const values = list.map(([gain]) => gain);
        const pool = trialPool({ gains: values, standardErrors: list.map(([, error]) => error), confidencePct: 90 });
        expect(pool.gain).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
        expect(pool.gain).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        expect(pool.low).toBeLessThan(pool.gain);
        expect(pool.newField === null).toBe(values.length === 2);
        expect(pool.weightsPct.reduce<number>((sum, weight) => sum + (weight ?? 0), 0)).toBeCloseTo(100, 8);
      }),
    );
  });
  it("is the plain mean when all errors are alike", () => {
    fc.assert(
      fc.property(fc.array(gains, { minLength: 2, maxLength: 9 }), errors, (values, error) => {
        const pool = trialPool({ gains: values, standardErrors: values.map(() => error), confidencePct: 90 });
        expect(pool.gain).toBeCloseTo(values.reduce((sum, value) => sum + value, 0) / values.length, 8);
      }),
    );
  });
});

test("a trend that is straight between checks is taken out wholly", () => {
  fc.assert(
    fc.property(gains, fc.integer({ min: 2, max: 5 }), (slope, everyStrips) => {
      const places = Array.from({ length: 2 * everyStrips + 1 }, (_, index) => index + 1);
      const treatments = places.map((place) => ((place - 1) % everyStrips === 0 ? "Check" : `t${place}`));
      const yields = places.map((place) => 150 + slope * place + (treatments[place - 1] === "Check" ? 0 : place));
      const { strips, checkMeanBuPerAc } = trialTrend({
        positions: places,
        treatments,
        yields,
        check: "check",
        sharePct: 100,
      });
      for (const { treatment, position, adjustedBuPerAc } of strips) {
        const own = treatment === "Check" ? 0 : position;
        expect(adjustedBuPerAc).toBeCloseTo(checkMeanBuPerAc + own, 8);
      }
    }),
  );
});

test("gains that add up show no interaction, whatever the blocks", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(bushels, gains), { minLength: 3, maxLength: 6 }), gains, gains, (blocks, a, b) => {
      // One strip of each block is off, the same for all four treatments over the trial.
      const noise = (treatment: number) =>
        blocks.map(([level, off], block) => level + (block % 4 === treatment ? off + 0.3 : 0));
      const [check, first, second, both] = [noise(0), noise(1), noise(2), noise(3)];
      const result = trialAddUp({
        check,
        a: first.map((value) => value + a),
        b: second.map((value) => value + b),
        both: both.map((value) => value + a + b),
        confidencePct: 90,
      });
      const plain = trialAddUp({ check, a: first, b: second, both, confidencePct: 90 });
      expect(result.interaction.gain).toBeCloseTo(plain.interaction.gain, 8);
      expect(result.together.gain - plain.together.gain).toBeCloseTo(a + b, 8);
      expect(result.interaction.standardError).toBeCloseTo(plain.interaction.standardError, 8);
    }),
    { numRuns: 40 },
  );
});

describe("varietyMeans", () => {
  const shrunken = (rows: readonly TrialRow[]) =>
    varietyMeans({
      varieties: rows.map(({ treatment }) => treatment),
      locations: rows.map(({ block }) => block),
      yields: rows.map(({ yieldBuPerAc }) => yieldBuPerAc),
      hasTraits: null,
      confidencePct: 90,
    });
  it("pulls every mean toward the middle and never past it, and shares out one chance of being best", () => {
    fc.assert(
      fc.property(trials, (rows) => {
        const { varieties } = shrunken(rows);
        const middle = varieties.reduce((sum, { mean }) => sum + mean, 0) / varieties.length;
        for (const { mean, shrunkenMean } of varieties) {
          expect(Math.abs(shrunkenMean - middle)).toBeLessThanOrEqual(Math.abs(mean - middle) + 1e-8);
          expect((shrunkenMean - middle) * (mean - middle)).toBeGreaterThanOrEqual(-1e-8);
        }
        expect(varieties.reduce((sum, { bestChance }) => sum + bestChance, 0)).toBeCloseTo(1, 8);
      }),
      { numRuns: 60 },
    );
  });
  it("of two values tells the chance that their difference is above 0", () => {
    const uncertain = fc.record({
      value: fc.double({ min: -10, max: 10, noNaN: true }),
      sd: fc.double({ min: 0.5, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(uncertain, uncertain, (a, b) => {
        const z = (a.value - b.value) / Math.hypot(a.sd, b.sd);
        expect(chanceOfBest([a, b])[0]).toBeCloseTo(normalCdf(z), 10);
      }),
    );
  });
  it("gives alike values alike chances", () => {
    expect(chanceOfBest([1, 1, 1, 1].map((value) => ({ value, sd: 2 })))).toEqual([0.25, 0.25, 0.25, 0.25]);
    expect(chanceOfBest([3, 1].map((value) => ({ value, sd: 0 })))).toEqual([1, 0]);
  });
});
