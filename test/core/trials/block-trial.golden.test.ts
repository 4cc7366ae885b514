import { readFileSync } from "node:fs";
import path from "node:path";
import { blockFit, contrastVariance, type Strip } from "../../../src/core/trials/block-fit";
import { blockTrial } from "../../../src/core/trials/block-trial";
import { fUpperTail } from "../../../src/core/statistics/f-distribution";
import { dot } from "../../../src/core/statistics/sums";
import { studentizedRangeQuantile } from "../../../src/core/statistics/studentized-range";

/** Groups of values as strips of one block: the one-way analysis. */
function oneWay(groups: readonly (readonly number[])[]) {
  const strips = groups.flatMap((values, treatment) =>
    values.map((yieldBuPerAc): Strip => ({ treatment, block: 0, yieldBuPerAc })),
  );
  return blockFit(strips, groups.length, 1);
}

function trial(table: Readonly<Record<string, readonly (number | null)[]>>, confidencePct: number) {
  const rows = Object.entries(table).flatMap(([treatment, yields]) =>
    yields.map((yieldBuPerAc, block) => ({ treatment, block: String(block + 1), yieldBuPerAc })),
  );
  return blockTrial({
    treatments: rows.map(({ treatment }) => treatment),
    blocks: rows.map(({ block }) => block),
    yields: rows.map(({ yieldBuPerAc }) => yieldBuPerAc),
    confidencePct,
    check: null,
  });
}

describe("NIST Statistical Reference Datasets, analysis of variance", () => {
  it("SiRstv, certified to 15 digits", () => {
    const fit = oneWay([
      [196.3052, 196.124, 196.189, 196.2569, 196.3403],
      [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
      [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
      [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
      [196.2119, 196.1051, 196.185, 196.0052, 196.209],
    ]);
    expect(fit.treatmentSquares / 5.11462616e-2).toBeCloseTo(1, 10);
    expect(fit.errorSquares / 2.1663656e-1).toBeCloseTo(1, 10);
    expect(fit.treatmentSquares / fit.treatmentDf / fit.errorMeanSquare / 1.18046237440255).toBeCloseTo(1, 10);
    expect(Math.sqrt(fit.errorMeanSquare) / 0.104076068334656).toBeCloseTo(1, 10);
  });

  // The rule of SmLs01 to 09 (Simon and Lesage 1989): nine groups about 1.4, 1.3, 1.5, 1.3, 1.5 …, each of one value on
  // its center and as many each 0.1 to both sides. By hand, n to a group: between 8 n × 0.01, within 9 (n - 1) × 0.01,
  // F = n. Only the constant in front grows; decimals behind it lose their digits.
  it.each([
    { name: "SmLs01", sides: 10, constant: 0, digits: 12 },
    { name: "SmLs02", sides: 100, constant: 0, digits: 12 },
    { name: "SmLs03", sides: 1000, constant: 0, digits: 11 },
    { name: "SmLs04, 7 leading digits", sides: 10, constant: 1e6, digits: 7 },
    { name: "SmLs05, 7 leading digits", sides: 100, constant: 1e6, digits: 7 },
    { name: "SmLs06, 7 leading digits", sides: 1000, constant: 1e6, digits: 7 },
    { name: "SmLs07, 13 leading digits", sides: 10, constant: 1e12, digits: 2 },
    { name: "SmLs08, 13 leading digits", sides: 100, constant: 1e12, digits: 2 },
    { name: "SmLs09, 13 leading digits", sides: 1000, constant: 1e12, digits: 2 },
  ])("$name", ({ sides, constant, digits }) => {
    const each = 2 * sides + 1;
    const groups = Array.from({ length: 9 }, (_, index) => {
      const tenths = index === 0 ? 14 : index % 2 === 1 ? 13 : 15;
      const at = (value: number) => constant + value / 10;
      return [at(tenths), ...Array.from({ length: sides }, () => [at(tenths - 1), at(tenths + 1)]).flat()];
    });
    const fit = oneWay(groups);
    expect(fit.treatmentSquares / (0.08 * each)).toBeCloseTo(1, digits);
    expect(fit.errorSquares / (0.09 * (each - 1))).toBeCloseTo(1, digits);
    expect(fit.treatmentSquares / 8 / fit.errorMeanSquare / each).toBeCloseTo(1, digits);
  });
});

test("NIST/SEMATECH e-Handbook, four groups of five: mean square 1.33075, F 9.7238, Tukey's difference 2.0874", () => {
  const fit = oneWay([
    [6.9, 5.4, 5.8, 4.6, 4.0],
    [8.3, 6.8, 7.8, 9.2, 6.5],
    [8.0, 10.5, 8.1, 6.9, 9.3],
    [5.8, 3.8, 6.1, 5.6, 6.2],
  ]);
  expect(fit.errorMeanSquare).toBeCloseTo(1.33075, 8);
  expect(fit.treatmentSquares / 3 / fit.errorMeanSquare).toBeCloseTo(9.7238, 4);
  const tukey = studentizedRangeQuantile(0.95, 4, 16) * Math.sqrt(fit.errorMeanSquare / 5);
  expect(tukey).toBeCloseTo(2.0874, 4);
});

test("Gomez and Gomez (1984), Table 2.5: six seeding rates of rice in four blocks", () => {
  const result = () =>
    trial(
      {
        25: [5113, 5398, 5307, 4678],
        50: [5346, 5952, 4719, 4264],
        75: [5272, 5713, 5483, 4749],
        100: [5164, 4831, 4986, 4410],
        125: [4804, 4848, 4432, 4748],
        150: [5254, 4542, 4919, 4098],
      },
      95,
    );
  expect(result().fit.blockSquares).toBeCloseTo(1_944_361, 0);
  expect(result().fit.treatmentSquares).toBeCloseTo(1_198_331, 0);
  expect(result().fit.errorSquares).toBeCloseTo(1_658_376, 0);
  expect(result().f).toBeCloseTo(2.17, 2);
  expect(result().chance).toBeCloseTo(0.1128, 4);
  expect(result().cvPct).toBeCloseTo(6.7, 2);
  expect(result().leastSignificantDifference).toBeCloseTo(501.1, 1);
  expect(result().tukeyDifference).toBeCloseTo(763.9, 1);
  expect(result().blockingEfficiency).toBeCloseTo(1.634, 3);
});

describe("a lost strip: D 30, 26, lost; E 35, 27, 33; F 43, 35, 45", () => {
  const result = () => trial({ D: [30, 26, null], E: [35, 27, 33], F: [43, 35, 45] }, 95);
  it("stands at Yates's (3·56 + 3·78 - 274) / (2·2) = 32: the mean of D is 88 / 3", () => {
    const mean = (name: string) => result().treatments.find(({ treatment }) => treatment === name)?.mean;
    expect(mean("D")).toBeCloseTo(88 / 3, 10);
    expect(mean("F")).toBeCloseTo(41, 10);
  });
  it("leaves 3 error df, squares 10.67 and 196.00, F 27.5625, CV 5.55 %", () => {
    expect(result().fit.errorDf).toBe(3);
    expect(result().fit.errorSquares).toBeCloseTo(32 / 3, 10);
    expect(result().fit.treatmentSquares).toBeCloseTo(196, 10);
    expect(result().f).toBeCloseTo(27.5625, 8);
    expect(result().cvPct).toBeCloseTo(5.55, 2);
  });
  it("widens the error of D: √(MSE · (2/3 + 3 / (3·2·2)))", () => {
    const expected = Math.sqrt((32 / 9) * (2 / 3 + 3 / 12));
    const late = result().treatments.find(({ treatment }) => treatment === "F")?.againstCheck;
    expect(late?.standardError).toBeCloseTo(expected, 10);
  });
  it("names the strip and gives no single LSD", () => {
    expect(result().missing).toEqual([{ treatment: "D", block: "3" }]);
    expect(result().leastSignificantDifference).toBeNull();
  });
});

test("the npk peas of Venables and Ripley: N and K cells, interaction -4.7", () => {
  const fit = blockFit(npkStrips(), 4, 6);
  // Order: none, N, K, both.
  [52.8833, 60.85, 51.25, 54.5167].forEach((mean, index) => expect(fit.means[index]).toBeCloseTo(mean, 4));
  expect(dot([1, -1, -1, 1], fit.means)).toBeCloseTo(-4.7, 10);
  // With six blocks the variance of the interaction is 4 · MSE / 6.
  expect(contrastVariance(fit, [1, -1, -1, 1])).toBeCloseTo((4 * fit.errorMeanSquare) / 6, 10);
});

function npkStrips(): Strip[] {
  const blocks = [
    { none: 46.8, n: 62.8, k: 49.5, both: 57.0 },
    { none: 56.0, n: 59.8, k: 55.5, both: 58.5 },
    { none: 62.8, n: 69.5, k: 55.0, both: 55.8 },
    { none: 44.2, n: 62.0, k: 45.5, both: 48.8 },
    { none: 51.5, n: 52.0, k: 48.8, both: 49.8 },
    { none: 56.0, n: 59.0, k: 53.2, both: 57.2 },
  ];
  return blocks.flatMap(({ none, n, k, both }, block) =>
    [none, n, k, both].map((yieldBuPerAc, treatment) => ({ treatment, block, yieldBuPerAc })),
  );
}

interface Unbalanced {
  readonly rows: readonly (readonly [number, number, number])[];
  readonly treatments: number;
  readonly blocks: number;
  readonly errorDf: number;
  readonly meanSquare: number;
  readonly f: number;
  readonly chance: number;
  readonly means: readonly number[];
  readonly gains: readonly number[];
  readonly errors: readonly number[];
  readonly t90: number;
}

// JSON.parse knows no types; the script beside the file writes this shape.
const { trials } = JSON.parse(readFileSync(path.join(__dirname, "unbalanced-trials.json"), "utf8")) as {
  trials: readonly Unbalanced[];
};

test.each(trials)(
  "$treatments treatments in $blocks blocks agree with NumPy's least squares on dummies",
  (expected) => {
    const result = blockTrial({
      treatments: expected.rows.map(([treatment]) => `t${treatment}`),
      blocks: expected.rows.map(([, block]) => `b${block}`),
      yields: expected.rows.map(([, , yieldBuPerAc]) => yieldBuPerAc),
      confidencePct: 90,
      check: "t0",
    });
    expect(result.fit.errorDf).toBe(expected.errorDf);
    expect(result.fit.errorMeanSquare).toBeCloseTo(expected.meanSquare, 8);
    expect(result.f).toBeCloseTo(expected.f, 8);
    expect(result.chance).toBeCloseTo(expected.chance, 9);
    expected.means.forEach((mean, index) => {
      const mine = result.treatments.find(({ treatment }) => treatment === `t${index}`);
      expect(mine?.mean).toBeCloseTo(mean, 8);
      if (index === 0) return;
      const [gain = 0, error = 0] = [expected.gains[index - 1], expected.errors[index - 1]];
      expect(mine?.againstCheck).toMatchObject({
        gain: expect.closeTo(gain, 8),
        standardError: expect.closeTo(error, 8),
        low: expect.closeTo(gain - expected.t90 * error, 7),
      });
    });
  },
);

test("two blocks of maize: F of treatments 4.80 on 3 and 3 df is not past the 10 % point 5.39", () => {
  // Printed: treatment squares 4.27, error squares 0.89.
  const f = 4.27 / 3 / (0.89 / 3);
  expect(f).toBeCloseTo(4.8, 1);
  expect(fUpperTail(f, 3, 3)).toBeGreaterThan(0.1);
});
