import { testConvert, type TestConvertInput } from "../../../src/core/soil/test-convert";
import type { TestBasisKey } from "../../../src/reference/guides";
import { testBases, testConversions } from "../../../src/reference/guides";
import { faultOf } from "../fault-of";

const ask = (value: number, from: TestBasisKey, to: TestBasisKey, more: Partial<TestConvertInput> = {}) =>
  testConvert({ value, from, to, element: null, depthIn: null, formula: null, ...more });

/** Typed again from the publications; each answer by hand. */
describe("published conversions", () => {
  it.each<[number, TestBasisKey, TestBasisKey, Partial<TestConvertInput>, number]>([
    [30, "ppm", "lbPerAc", {}, 60],
    [30, "ppm", "lbPerAc", { depthIn: 6.67 }, 60],
    [30, "ppm", "lbPerAc", { depthIn: 8 }, 71.964],
    [60, "lbPerAc", "ppm", {}, 30],
    [71.964, "lbPerAc", "ppm", { depthIn: 8 }, 30],
    [10, "nitratePpm", "nitrateLb", { depthIn: 12 }, 36],
    [40, "mehlich3", "bray", {}, 29.6296],
    [40, "mehlich3Icp", "bray", { formula: "ohioIcp" }, 25.2],
    [40, "mehlich3", "bray", { formula: "laboratory" }, 28],
    [20, "bray", "mehlich3", {}, 27],
    [20, "bray", "mehlich3Color", {}, 23.4],
    [15, "bray", "olsen", {}, 10.005],
    [100, "ammoniumAcetate", "mehlich3", {}, 114],
    [114, "mehlich3", "ammoniumAcetate", { element: "K" }, 100],
    [100, "mehlich3", "ammoniumAcetate", { element: "K", formula: "laboratory" }, 84],
    [1000, "mehlich3", "ammoniumAcetate", { element: "Ca" }, 750],
    [100, "mehlich3", "ammoniumAcetate", { element: "Mg" }, 88],
    [50, "mehlich3", "index", { element: "P" }, 50],
    [140, "mehlich3", "index", { element: "K" }, 50],
    [220, "mehlich3", "index", { element: "Mg" }, 100],
    [450, "mehlich3", "index", { element: "Ca" }, 25],
    [391, "lbPerAc", "meq", { element: "K" }, 0.5],
    [480, "lbPerAc", "meq", { element: "Mg" }, 2],
    [3200, "lbPerAc", "meq", { element: "Ca" }, 8],
    [46, "lbPerAc", "meq", { element: "Na" }, 0.1],
    [7.5, "adamsEvans", "hydrogen", {}, 4],
    [6.5, "smp", "hydrogen", {}, 6],
    [7.2, "smp", "hydrogen", {}, 0],
    [6.1, "mehlichBuffer", "acidity", {}, 2],
    [10, "P", "P2O5", {}, 22.9],
    [100, "P2O5", "P", {}, 44],
    [10, "K", "K2O", {}, 12],
    [100, "K2O", "K", {}, 83],
    [10, "Mg", "MgO", {}, 16],
    [10, "Ca", "CaO", {}, 14],
    [100, "CaO", "limestone", {}, 178.5],
    [100, "NO3", "N", {}, 22.6],
    [100, "SO4", "S", {}, 33.4],
    [100, "kgPerHa", "lbPerAc", {}, 89.22],
    [10, "tPerHa", "tonPerAc", {}, 4.461],
  ])("%d %s to %s %j is %d", (value, from, to, more, gives) => {
    expect(ask(value, from, to, more).value).toBeCloseTo(gives, 3);
  });

  it("holds the 36 printed ones, two of them also with a depth", () => {
    expect(testConversions.rows).toHaveLength(38);
  });
});

/** At M3 15: 15 / 1.35 = 11.1 by ratio, 0.832 × 15 − 8.08 = 4.4 by the ICP formula. */
describe("the two Ohio formulas", () => {
  it("are both shown and neither is taken at 20 ppm or less", () => {
    expect(faultOf(() => ask(15, "mehlich3", "bray"))).toEqual({
      kind: "waiting",
      argument: "formula",
      accepted:
        "published formulas disagree at 20 ppm or less (ratio gives 11.1; Ohio ICP gives 4.4; laboratory gives 10.5); name one",
    });
    expect(ask(15, "mehlich3", "bray", { formula: "ohioIcp" }).value).toBeCloseTo(4.4, 9);
    expect(ask(20.01, "mehlich3", "bray").row.formula).toBe("ratio");
  });
  it("stop at 0 and say when the value lies outside the printed range", () => {
    expect(ask(5, "mehlich3", "bray", { formula: "ohioIcp" })).toMatchObject({ value: 0, isOutside: true });
    expect(ask(100, "mehlich3", "bray", { formula: "ohioIcp" }).isOutside).toBe(false);
    expect(ask(40, "mehlich3", "bray").others.map(({ row }) => row.formula)).toEqual(["ohioIcp", "laboratory"]);
  });
});

describe("what is refused", () => {
  it("names the pairs that have an equation", () => {
    expect(faultOf(() => ask(10, "olsen", "bray"))).toMatchObject({
      kind: "notPublished",
      what: "equation from Olsen to Bray P1",
      instead: "Into Bray P1: from Mehlich-3. Out of Olsen: none.",
    });
    expect(faultOf(() => ask(10, "mehlich3Color", "bray"))).toMatchObject({ kind: "notPublished" });
  });
  it("waits for the nutrient and the depth that an equation turns on", () => {
    expect(faultOf(() => ask(100, "mehlich3", "ammoniumAcetate"))).toEqual({
      kind: "waiting",
      argument: "nutrient",
      accepted: "K, Ca, Mg",
    });
    expect(faultOf(() => ask(10, "nitratePpm", "nitrateLb"))).toEqual({ kind: "waiting", argument: "depth" });
  });
  it("refuses a nutrient or formula the pair is not printed for", () => {
    expect(faultOf(() => ask(30, "mehlich3", "bray", { element: "K" }))).toMatchObject({ argument: "nutrient" });
    expect(faultOf(() => ask(30, "bray", "olsen", { formula: "ratio" }))).toMatchObject({ argument: "formula" });
    expect(faultOf(() => ask(65, "smp", "hydrogen"))).toMatchObject({ argument: "value", suggestion: "6.5" });
  });
});

describe("laws", () => {
  it("a higher test never converts to less, but for a buffer pH", () => {
    for (const row of testConversions.rows) {
      if (row.from === "smp" || row.from === "adamsEvans" || row.from === "mehlichBuffer") continue;
      const more = {
        element: row.element ?? null,
        formula: row.formula ?? null,
        depthIn: row.depth === undefined ? null : 8,
      };
      expect(ask(61, row.from, row.to, more).value).toBeGreaterThan(ask(60, row.from, row.to, more).value);
    }
  });
  it("goes there and back where both ways are printed by the same table", () => {
    for (const value of [25, 60, 140]) {
      const there = ask(value, "bray", "mehlich3").value;
      expect(ask(there, "mehlich3", "bray", { formula: "ratio" }).value).toBeCloseTo(value, 9);
      const pounds = ask(value, "ppm", "lbPerAc", { depthIn: 9 }).value;
      expect(ask(pounds, "lbPerAc", "ppm", { depthIn: 9 }).value).toBeCloseTo(value, 9);
    }
  });
  it("has a label of its own for every basis", () => {
    const labels = Object.values(testBases).map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  });
});
