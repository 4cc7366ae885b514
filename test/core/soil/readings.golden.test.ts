import { cations } from "../../../src/core/soil/cations";
import { chlorosisRisk } from "../../../src/core/soil/chlorosis-risk";
import { microNeed, type MicroNeedInput } from "../../../src/core/soil/micro-need";
import { saltLimit, type SaltLimitInput } from "../../../src/core/soil/salt-limit";
import { sulfurNeed, type SulfurNeedInput } from "../../../src/core/soil/sulfur-need";
import { faultOf } from "../fault-of";

describe("salt in the furrow, printed table of Kansas", () => {
  const corn = (rowWidthIn: number, soil: SaltLimitInput["soil"], more: Partial<SaltLimitInput> = {}) =>
    saltLimit({
      crop: "corn",
      rowWidthIn,
      soil,
      placement: "furrow",
      isDry: false,
      guide: null,
      cecMeq: null,
      ...more,
    });

  it.each([
    [40, 6, 4],
    [30, 8, 6],
    [20, 12, 8],
  ])("%d-inch rows: %d lb on medium to fine soil, %d on sand", (width, heavier, sandy) => {
    expect(corn(width, "medium").limitLbPerAc).toBeCloseTo(heavier, 9);
    expect(corn(width, "fine").limitLbPerAc).toBeCloseTo(heavier, 9);
    expect(corn(width, "sandy").limitLbPerAc).toBeCloseTo(sandy, 9);
    expect(corn(width, null).limitLbPerAc).toBeCloseTo(sandy, 9);
  });

  it("is 240 over the row width between, half on dry soil, per foot of row 8 × 30 / 522,720", () => {
    expect(corn(22, "medium").limitLbPerAc).toBeCloseTo(240 / 22, 9);
    // On sand the pounds a row-foot go from 160 at 20 in to 180 at 30 in: 170 / 25 = 6.8.
    expect(corn(25, "sandy").limitLbPerAc).toBeCloseTo(6.8, 9);
    expect(corn(30, "medium", { isDry: true }).limitLbPerAc).toBeCloseTo(4, 9);
    expect(corn(30, "medium").poundPerRowFoot).toBeCloseTo(240 / 522_720, 12);
  });

  it("reads 5 or 8 lb by CEC from the older Tri-State guide", () => {
    expect(corn(30, null, { guide: "triState", cecMeq: 7 }).limitLbPerAc).toBe(5);
    expect(corn(30, null, { guide: "triState", cecMeq: 8 }).limitLbPerAc).toBe(8);
    expect(faultOf(() => corn(30, null, { guide: "triState" }))).toEqual({ kind: "waiting", argument: "cec" });
  });

  it("is nothing for soybean, dry bean, sunflower and canola, and not printed for others or other widths", () => {
    for (const crop of ["soybean", "dryBean", "sunflower", "canola"] as const) {
      expect(corn(30, "medium", { crop }).limitLbPerAc).toBe(0);
    }
    expect(faultOf(() => corn(30, "medium", { crop: "wheat" }))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => corn(15, "medium"))).toMatchObject({ kind: "notPublished", what: "limit for 15-inch rows" });
    expect(faultOf(() => corn(41, "medium"))).toMatchObject({ kind: "notPublished" });
  });

  it.each([
    ["corn", 100, 140],
    ["dryBean", 100, 100],
    ["soybean", 80, 80],
    ["sugarBeet", 80, 120],
  ] as const)("2 × 2 band for %s: %d lb, %d on clay", (crop, salts, onClay) => {
    const band = { crop, placement: "band" } as const;
    expect(corn(30, null, band).limitLbPerAc).toBe(salts);
    expect(corn(30, "fine", band).limitLbPerAc).toBe(onClay);
  });
});

describe("sulfur", () => {
  const ask = (asked: Pick<SulfurNeedInput, "crop" | "guide"> & Partial<SulfurNeedInput>) =>
    sulfurNeed({ yieldGoal: 10, organicMatterPct: null, soilTest: null, soil: null, creditsLbPerAc: 0, ...asked });

  it("Kansas by hand: 0.6, 0.2 or 0.4 × yield − 2.5 × organic matter − profile − credits, never below 0", () => {
    const kansas = { guide: "KS", organicMatterPct: 2, soilTest: 10 } as const;
    expect(ask({ ...kansas, crop: "wheat", yieldGoal: 60 }).needLbPerAc).toBeCloseTo(21, 9);
    expect(ask({ ...kansas, crop: "corn", yieldGoal: 150 }).needLbPerAc).toBeCloseTo(15, 9);
    expect(ask({ ...kansas, crop: "soybean", yieldGoal: 60 }).needLbPerAc).toBeCloseTo(9, 9);
    expect(ask({ ...kansas, crop: "wheat", yieldGoal: 60, creditsLbPerAc: 5 }).needLbPerAc).toBeCloseTo(16, 9);
    expect(ask({ ...kansas, crop: "wheat", yieldGoal: 20 }).needLbPerAc).toBe(0);
    expect(faultOf(() => ask({ crop: "wheat", guide: "KS", organicMatterPct: 2 }))).toMatchObject({
      argument: "soilTest",
    });
  });

  it("Minnesota: 25 on sand, 10 to 15 for corn under 4 % organic matter, none above", () => {
    const corn = { crop: "corn", guide: "MN" } as const;
    expect(ask({ ...corn, soil: "sandy" }).needLbPerAc).toBe(25);
    const silt = ask({ ...corn, soil: "medium", organicMatterPct: 3.9 });
    expect(silt).toMatchObject({ needLbPerAc: 12.5, lowLbPerAc: 10, highLbPerAc: 15 });
    expect(ask({ ...corn, soil: "medium", organicMatterPct: 4 }).needLbPerAc).toBe(0);
    expect(faultOf(() => ask(corn))).toEqual({ kind: "waiting", argument: "soil" });
    expect(faultOf(() => ask({ crop: "wheat", guide: "MN", soil: "fine" }))).toMatchObject({ kind: "notPublished" });
  });

  it("Nebraska prints where corn responds, not how much", () => {
    const corn = { crop: "corn", guide: "NE", soil: "sandy", organicMatterPct: 1 } as const;
    expect(ask({ ...corn, soilTest: 8 }).needLbPerAc).toBe(0);
    expect(faultOf(() => ask({ ...corn, soilTest: 7.9 }))).toMatchObject({ kind: "notPublished" });
    expect(ask({ crop: "corn", guide: "NE", soil: "fine" }).needLbPerAc).toBe(0);
    expect(ask({ ...corn, crop: "alfalfa", soilTest: 5 }).needLbPerAc).toBe(0);
  });

  it("North Dakota at least 10, canola 20 to 30; Iowa alfalfa 20 to 30", () => {
    expect(ask({ crop: "springWheat", guide: "ND" }).needLbPerAc).toBe(10);
    expect(ask({ crop: "canola", guide: "ND" })).toMatchObject({ needLbPerAc: 25, lowLbPerAc: 20, highLbPerAc: 30 });
    expect(ask({ crop: "alfalfa", guide: "IA" })).toMatchObject({ lowLbPerAc: 20, highLbPerAc: 30 });
  });
});

describe("micronutrients", () => {
  const ask = (asked: Pick<MicroNeedInput, "nutrient" | "crop" | "guide"> & Partial<MicroNeedInput>) =>
    microNeed({ soilTest: null, ph: null, placement: null, isOrganicSoil: false, cecMeq: null, ...asked });
  const zinc = { nutrient: "Zn", crop: "corn" } as const;

  it.each([
    [0, 10, 2],
    [0.4, 10, 2],
    [0.5, 10, 2],
    [0.51, 5, 1],
    [0.75, 5, 1],
    [0.76, 0, 0],
  ])("Minnesota corn, DTPA %d ppm: %d lb broadcast or %d banded", (soilTest, broadcast, band) => {
    const asked = { ...zinc, guide: "MN", soilTest } as const;
    expect(ask({ ...asked, placement: "broadcast" }).needLbPerAc).toBe(broadcast);
    expect(ask({ ...asked, placement: "band" }).needLbPerAc).toBe(band);
  });

  it("zinc by Kansas, Iowa, the South; Nebraska and North Dakota print a level only", () => {
    expect(ask({ ...zinc, guide: "KS", soilTest: 0.4 }).needLbPerAc).toBeCloseTo(7, 9); // 11.5 − 4.5
    expect(ask({ ...zinc, guide: "KS", soilTest: 0.98 }).needLbPerAc).toBe(1);
    expect(ask({ ...zinc, guide: "KS", soilTest: 1.1 }).needLbPerAc).toBe(0);
    expect([0.4, 0.5, 0.8, 0.9].map((soilTest) => ask({ ...zinc, guide: "IA", soilTest }).needLbPerAc)).toEqual([
      10, 5, 5, 0,
    ]);
    expect([0.9, 1].map((soilTest) => ask({ ...zinc, guide: "south", soilTest }).needLbPerAc)).toEqual([10, 0]);
    expect(ask({ ...zinc, guide: "NE", soilTest: 0.8 }).needLbPerAc).toBe(0);
    expect(faultOf(() => ask({ ...zinc, guide: "NE", soilTest: 0.7 }))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => ask({ ...zinc, guide: "ND", soilTest: 0.9 }))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => ask({ ...zinc, guide: "ncA", soilTest: 10 }))).toMatchObject({
      instead: expect.stringContaining("6 lb/ac broadcast or 3 banded"),
    });
  });

  it("manganese by Michigan, North Carolina's indexes and New Jersey's, by hand", () => {
    const bean = { nutrient: "Mn", crop: "soybean" } as const;
    expect(ask({ ...bean, guide: "MI", soilTest: 10, ph: 7 }).needLbPerAc).toBeCloseTo(3.9, 9); // 43.4 − 3.5 − 36
    expect(ask({ ...bean, guide: "MI", soilTest: 10, ph: 7, isOrganicSoil: true }).needLbPerAc).toBeCloseTo(9.56, 9); // 58.66 − 3.1 − 46
    const acid = ask({ ...bean, guide: "ncA", soilTest: 50, ph: 6 });
    expect([acid.index, acid.needLbPerAc]).toEqual([expect.closeTo(40, 9), 0]); // 101.2 + 30 − 91.2
    expect(ask({ ...bean, guide: "ncA", soilTest: 20, ph: 6 }).needLbPerAc).toBe(10); // 22
    expect(ask({ ...bean, guide: "ncB", soilTest: 20, ph: 6 }).needLbPerAc).toBe(0); // 29
    expect(ask({ ...bean, guide: "NJ", soilTest: 10, ph: 6 }).index).toBeCloseTo(48, 9); // 101.7 + 37.5 − 91.2
    expect(faultOf(() => ask({ ...bean, guide: "NJ", soilTest: 2, ph: 6 }))).toMatchObject({ kind: "notPublished" });
    expect(ask({ ...bean, guide: "general" })).toMatchObject({ needLbPerAc: 1.5, lowLbPerAc: 1, highLbPerAc: 2 });
  });

  it("boron, chloride, magnesium", () => {
    const boron = { nutrient: "B", crop: "alfalfa", guide: "PA" } as const;
    expect([1, 1.01].map((soilTest) => ask({ ...boron, soilTest }).needLbPerAc)).toEqual([2, 0]);
    expect(ask({ nutrient: "B", crop: "corn", guide: "MN" }).needLbPerAc).toBe(0);
    const chloride = { nutrient: "Cl", crop: "wheat" } as const;
    expect([29, 30, 45, 46].map((soilTest) => ask({ ...chloride, guide: "KS", soilTest }).needLbPerAc)).toEqual([
      20, 10, 10, 0,
    ]);
    expect([20, 70].map((soilTest) => ask({ ...chloride, guide: "SD", soilTest }).needLbPerAc)).toEqual([40, 0]);
    const magnesium = { nutrient: "Mg", crop: "corn", guide: "OH", soilTest: 40 } as const;
    expect(ask({ ...magnesium, cecMeq: 5 }).needLbPerAc).toBe(0);
    expect(faultOf(() => ask({ ...magnesium, cecMeq: 6 }))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => ask(magnesium))).toEqual({ kind: "waiting", argument: "cec" });
  });

  it("waits for the placement where two are printed and refuses one that is not", () => {
    expect(faultOf(() => ask({ ...zinc, guide: "MN", soilTest: 0.4 }))).toEqual({
      kind: "waiting",
      argument: "placement",
    });
    expect(faultOf(() => ask({ ...zinc, guide: "KS", soilTest: 0.4, placement: "band" }))).toMatchObject({
      kind: "notPublished",
    });
  });
});

describe("iron chlorosis, second typing of the printed table", () => {
  it.each([
    [0.2, ["low", "low", "moderate"]],
    [0.25, ["low", "low", "moderate"]],
    [0.26, ["low", "moderate", "high"]],
    [0.5, ["low", "moderate", "high"]],
    [1, ["moderate", "high", "very high"]],
    [1.01, ["very high", "very high", "extreme"]],
  ])("salts %d dS/m at 2.5, 5 and 5.01 %% carbonate", (salts, expected) => {
    expect([2.5, 5, 5.01].map((carbonate) => chlorosisRisk(carbonate, salts).risk)).toEqual(expected);
  });
});

describe("cations", () => {
  const soil = {
    calciumPpm: 1600,
    magnesiumPpm: 240,
    potassiumPpm: 195.5,
    sodiumPpm: 0,
    bufferPh: null,
    buffer: null,
    soilPh: null,
    acidityMeq: null,
  } as const;

  it("add to 8 + 2 + 0.5 + 2 = 12.5 meq", () => {
    expect(cations({ ...soil, acidityMeq: 2 }).cecMeq).toBeCloseTo(12.5, 9);
    expect(cations({ ...soil, sodiumPpm: 230, acidityMeq: 2 }).cecMeq).toBeCloseTo(13.5, 9);
  });

  it("take acidity from Adams-Evans 8 × (8 − buffer), SMP 12 × (7 − buffer), none above pH 7", () => {
    expect(cations({ ...soil, bufferPh: 7.8, buffer: "adamsEvans" }).acidityMeq).toBeCloseTo(1.6, 9);
    expect(cations({ ...soil, bufferPh: 6.8, buffer: "smp" }).acidityMeq).toBeCloseTo(2.4, 9);
    expect(cations({ ...soil, bufferPh: 7.2, buffer: "smp" }).acidityMeq).toBe(0);
    expect(cations({ ...soil, bufferPh: 6.8, buffer: "smp", soilPh: 7.5 })).toMatchObject({
      acidityMeq: 0,
      isInflated: true,
    });
  });

  it("wait for the buffer and refuse a soil of nothing", () => {
    expect(faultOf(() => cations(soil))).toEqual({ kind: "waiting", argument: "bufferPH" });
    expect(faultOf(() => cations({ ...soil, bufferPh: 6.8 }))).toEqual({ kind: "waiting", argument: "buffer" });
    const empty = { ...soil, calciumPpm: 0, magnesiumPpm: 0, potassiumPpm: 0, acidityMeq: 0 };
    expect(faultOf(() => cations(empty))).toMatchObject({ kind: "refused" });
  });
});
