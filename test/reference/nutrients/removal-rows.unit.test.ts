import { nutrientKeys, removalRows, type NutrientKey } from "../../../src/reference/nutrients";
import { sources } from "../../../src/reference/sources";

/** Sums of every printed number, added up by another program from the printed rows. */
const columnSums: Readonly<Record<NutrientKey, { count: number; sum: number }>> = {
  N: { count: 90, sum: 1251.903 },
  P2O5: { count: 96, sum: 383.728 },
  K2O: { count: 100, sum: 1511.204 },
  Ca: { count: 33, sum: 155.5513 },
  Mg: { count: 46, sum: 89.1215 },
  S: { count: 65, sum: 100.1265 },
  Zn: { count: 28, sum: 0.96235 },
  Mn: { count: 26, sum: 1.96255 },
  Cu: { count: 27, sum: 0.1875 },
  Fe: { count: 3, sum: 0.1173 },
  B: { count: 2, sum: 0.050125 },
};

describe("removal rows", () => {
  it("are 103, of which 61 were seen in print", () => {
    expect(removalRows).toHaveLength(103);
    expect(removalRows.filter(({ mark }) => mark === "V")).toHaveLength(61);
  });

  it.each(nutrientKeys)("keep the count and sum of their %s numbers", (nutrient) => {
    const numbers = removalRows.flatMap(({ lb }) => lb[nutrient] ?? []);
    expect(numbers).toHaveLength(columnSums[nutrient].count);
    expect(numbers.reduce((total, number) => total + number, 0)).toBeCloseTo(columnSums[nutrient].sum, 9);
  });

  it("keep the sum of their moistures", () => {
    expect(removalRows.reduce((total, { moisturePct }) => total + (moisturePct ?? 0), 0)).toBeCloseTo(1597, 9);
  });

  /** Typed a second time from the printed pages. */
  it.each([
    ["corn", "grain", "inMiOh2020", "P2O5", 0.35],
    ["corn", "grain", "inMiOh1995", "K2O", 0.27],
    ["corn", "grain", "northCarolina", "Zn", 0.001],
    ["corn", "silage", "iowa", "K2O", 9],
    ["corn", "stover", "iowa", "P2O5", 4.8],
    ["soybean", "grain", "inMiOh2020", "K2O", 1.15],
    ["soybean", "stover", "iowa", "K2O", 23],
    ["wheat", "grain", "inMiOh2020", "N", 1.2],
    ["wheat", "straw", "inMiOh2020", "K2O", 29],
    ["oat", "grain", "ontario", "N", 0.715],
    ["sorghum", "grain", "kansas", "P2O5", 0.34],
    ["potato", "tuber", "northDakota", "K2O", 0.58],
    ["alfalfa", "hay", "inMiOh2020", "K2O", 49],
    ["alfalfa", "hay", "kentucky", "P2O5", 14],
    ["bermudagrass", "hay", "northCarolina", "N", 50],
    ["cotton", "lint", "institute2014", "N", 32],
  ] as const)("%s %s of %s prints %s %d", (crop, part, set, nutrient, lb) => {
    const found = removalRows.filter((row) => row.crop === crop && row.part === part && row.set === set);
    expect(found[0]?.lb[nutrient]).toBe(lb);
  });

  it("name one usual row per crop and part at most", () => {
    const usual = removalRows.filter((row) => row.usual).map(({ crop, part }) => `${crop} ${part}`);
    expect(new Set(usual).size).toBe(usual.length);
  });

  it("hold one row per crop, part, set and unit", () => {
    const keys = removalRows.map(({ crop, part, set, unit }) => `${crop} ${part} ${set} ${unit}`);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it("cite a source that exists and print only positive numbers", () => {
    for (const row of removalRows) {
      expect(sources).toHaveProperty([row.source]);
      for (const lb of Object.values(row.lb)) expect(lb).toBeGreaterThan(0);
    }
  });

  it("count memory and sight only among the nutrients they print", () => {
    for (const { lb, fromMemory = [], seen = [] } of removalRows) {
      for (const nutrient of [...fromMemory, ...seen]) expect(lb).toHaveProperty(nutrient);
    }
  });
});
