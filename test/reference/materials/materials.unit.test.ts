import {
  bulkDensity,
  criticalHumidity,
  liquidDensity,
  materialAcidity,
  materialAnalysis,
  materialAnalysisRange,
  materials,
  saltIndex,
  saltIndexPerUnit,
  type MaterialKey,
} from "../../../src/reference/materials";
import type { NutrientKey } from "../../../src/reference/nutrients";
import { sources } from "../../../src/reference/sources";

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const tables = [
  materialAnalysis,
  materialAnalysisRange,
  liquidDensity,
  bulkDensity,
  materialAcidity,
  criticalHumidity,
  saltIndex,
  saltIndexPerUnit,
];

/** Counts and sums added up by another program from the printed lists. */
describe("fertilizer materials", () => {
  it("are 33, each with an analysis or a range of analyses", () => {
    const withAnalysis = [...materialAnalysis.rows, ...materialAnalysisRange.rows].map(({ material }) => material);
    expect(Object.keys(materials)).toHaveLength(33);
    expect([...withAnalysis].sort()).toEqual(Object.keys(materials).sort());
  });

  it.each([
    ["N", 17, 386.5],
    ["P2O5", 7, 237],
    ["K2O", 7, 217],
    ["Ca", 4, 75],
    ["Mg", 2, 20.8],
    ["S", 15, 309],
  ] as const)("keep %s in %d materials, %d %% in all", (nutrient: NutrientKey, count, total) => {
    const values = materialAnalysis.rows.flatMap(({ pct }) => pct[nutrient] ?? []);
    expect(values).toHaveLength(count);
    expect(sum(values)).toBeCloseTo(total, 9);
  });

  it("keep the gallons, the acidity, the humidity and the salt index", () => {
    expect(sum(liquidDensity.rows.map(({ lbPerGal }) => lbPerGal))).toBeCloseTo(115.47, 9);
    expect(sum(materialAcidity.rows.map(({ limeLbPer100Lb }) => limeLbPer100Lb))).toBe(-978);
    expect(materialAcidity.rows).toHaveLength(27);
    expect(sum(criticalHumidity.rows.map(({ humidityPct }) => humidityPct))).toBe(562);
    expect(sum(saltIndexPerUnit.rows.map(({ relativeSaltIndex }) => relativeSaltIndex))).toBeCloseTo(177.3, 9);
  });

  it("keep the two salt index lists apart: 1154.7 with two newer rows, 7.8 and 42.6, in place of 46.1", () => {
    const older = saltIndex.rows.filter(({ list }) => list === "older");
    expect(sum(older.map((row) => row.saltIndex))).toBeCloseTo(1154.7 - 7.8 - 42.6 + 46.1, 9);
    const newer = saltIndex.rows.filter(({ list }) => list === "newer");
    expect(sum(newer.map((row) => row.saltIndex))).toBeCloseTo(
      74.4 + 104 + 88.3 + 26.7 + 29.2 + 69.5 + 65 + 116.2 + 42.6 + 7.8,
      9,
    );
  });

  /** Typed a second time from the printed pages. */
  it.each([
    ["uan28", 10.67],
    ["uan32", 11.06],
    ["ammoniumPolyphosphate", 11.65],
    ["ammoniumThiosulfate", 11.04],
  ] as const)("print a gallon of %s at %d lb", (key: MaterialKey, lbPerGal) => {
    expect(liquidDensity.rows.find(({ material }) => material === key)?.lbPerGal).toBe(lbPerGal);
  });

  it.each([
    ["monoammoniumPhosphate", { N: 11, P2O5: 52 }],
    ["diammoniumPhosphate", { N: 18, P2O5: 46 }],
    ["potassiumMagnesiumSulfate", { K2O: 22, Mg: 11, S: 22 }],
    ["ammoniumSulfate", { N: 21, S: 24 }],
  ] as const)("print the grade of %s", (key: MaterialKey, pct) => {
    expect(materialAnalysis.rows.find(({ material }) => material === key)?.pct).toEqual(pct);
  });

  it("give liquids a weight per gallon and dry materials none", () => {
    const weighed = liquidDensity.rows.map(({ material }) => materials[material].form);
    expect(weighed).not.toContain("dry");
    expect(bulkDensity.rows.every(({ material }) => materials[material].form === "dry")).toBe(true);
    expect(bulkDensity.rows.every(({ lowLbPerCuFt, highLbPerCuFt }) => lowLbPerCuFt <= highLbPerCuFt)).toBe(true);
  });

  it("cite a source that exists on every row, and hold no more than 100 % of a material", () => {
    for (const { rows } of tables) for (const { source } of rows) expect(sources).toHaveProperty([source]);
    for (const { pct, fromMemory = [] } of materialAnalysis.rows) {
      expect(sum(Object.values(pct))).toBeLessThanOrEqual(100);
      for (const nutrient of fromMemory) expect(pct).toHaveProperty(nutrient);
    }
  });
});
