import { nutrientNeed, type NutrientNeed, type NutrientNeedInput } from "../../../../src/core/soil/need/nutrient-need";
import { testRating } from "../../../../src/core/soil/need/test-rating";
import type { BuildMaintain, Guide, Plane } from "../../../../src/reference/guides";
import { faultOf } from "../../fault-of";
import { guideUnderTest } from "./guide-under-test";

function ask(guide: Guide, input: Partial<NutrientNeedInput>): NutrientNeed {
  return nutrientNeed({
    guide,
    nutrient: "P2O5",
    crop: "corn",
    yieldGoalPerAc: 180,
    soilTest: 10,
    cecMeq: null,
    extractant: null,
    approach: null,
    rotationCrop: null,
    ...input,
  });
}

const still = (base: number) => ({ base, perCec: 0 });

/** Bulletin E-2567 of 1995: build-up, a plateau of 15 ppm, then a fall to nothing over 10 ppm. */
const inMiOh1995: BuildMaintain = {
  kind: "buildMaintain",
  critical: still(15),
  plateau: 15,
  drawdown: 10,
  build: { lbPerUnit: still(20), years: 4, curve: "straight" },
  maintenance: { times: 1, plus: 0 },
  zones: { build: "buildup", maintain: "maintenance", drawdown: "drawdown", none: "none" },
};

describe("build-up, maintenance and drawdown", () => {
  const guide = guideUnderTest([{ form: inMiOh1995 }], { roundTo: 5, removalSet: "inMiOh1995" });

  /** Table 14 of E-2567, corn. */
  it.each([
    [100, [85, 60, 35, 20]],
    [120, [95, 70, 45, 20]],
    [140, [100, 75, 50, 25]],
    [160, [110, 85, 60, 30]],
    [180, [115, 90, 65, 35]],
  ])("meets Table 14 of 1995 at %d bu: %j at 5, 10, 15 and 35 ppm", (yieldGoalPerAc, printed) => {
    const rates = [5, 10, 15, 35].map((soilTest) => ask(guide, { yieldGoalPerAc, soilTest }).rateLbPerAc);
    expect(rates).toEqual(printed);
    expect(ask(guide, { yieldGoalPerAc, soilTest: 30 }).rateLbPerAc).toBe(printed[2]);
    expect(ask(guide, { yieldGoalPerAc, soilTest: 40 }).rateLbPerAc).toBe(0);
  });

  it("names the zones", () => {
    const zones = [14, 15, 30, 31, 40].map((soilTest) => ask(guide, { soilTest }).zone);
    expect(zones).toEqual(["buildup", "maintenance", "maintenance", "drawdown", "none"]);
  });

  it("takes a critical level that rises with CEC: 75 + 2.5 × 10 = 100, a fall over 20 after 30", () => {
    const form = { ...inMiOh1995, critical: { base: 75, perCec: 2.5 }, plateau: 30, drawdown: 20 };
    const potash = guideUnderTest([{ form }], { removalSet: "inMiOh1995" });
    const at = (soilTest: number) => ask(potash, { nutrient: "K2O", soilTest, cecMeq: 10 });
    expect(at(90)).toMatchObject({ criticalLevel: 100, maintenanceLimit: 150 });
    // Half way down: 180 × 0.27 / 2 = 24.3.
    expect(at(140).unroundedLbPerAc).toBeCloseTo(24.3, 9);
    expect(faultOf(() => ask(potash, { nutrient: "K2O", soilTest: 90 }))).toMatchObject({ argument: "cec" });
  });
});

describe("lb/ac tests and square-root build-up", () => {
  it("builds Illinois soil by (40 − 30) × 9 / 4 = 22.5 lb a year (Agronomy Handbook, chapter 8)", () => {
    const form: BuildMaintain = {
      ...inMiOh1995,
      critical: still(40),
      plateau: 20,
      drawdown: 0,
      build: { lbPerUnit: still(9), years: 4, curve: "straight" },
      maintenance: { times: 1, timesFor: { wheat: 1.5 }, plus: 0 },
    };
    const guide = guideUnderTest([{ form }], { testUnit: "lb/ac", removalSet: "illinois" });
    expect(Math.abs(ask(guide, { soilTest: 30 }).buildupLbPerAc - 22.5)).toBeLessThanOrEqual(0.5);
    // Wheat maintenance counts one and a half times: 70 × 0.46 × 1.5 = 48.3.
    expect(ask(guide, { crop: "wheat", yieldGoalPerAc: 70, soilTest: 50 }).unroundedLbPerAc).toBeCloseTo(48.3, 9);
    expect(ask(guide, { soilTest: 60 }).rateLbPerAc).toBe(0);
  });

  it("builds along a square root: 110 × (√45 − √25) / 8 = 23.4878", () => {
    const form: BuildMaintain = {
      ...inMiOh1995,
      critical: still(45),
      build: { lbPerUnit: still(110), years: 8, curve: "squareRoot" },
    };
    const guide = guideUnderTest([{ form }], { testUnit: "lb/ac", removalSet: "missouri" });
    expect(ask(guide, { soilTest: 25 }).buildupLbPerAc).toBeCloseTo(23.4878, 4);
  });
});

describe("planes in test and yield", () => {
  const kansas: Plane = {
    kind: "plane",
    constant: 50,
    perYield: 0.2,
    perTest: -2.5,
    perYieldTest: -0.01,
    critical: 20,
    least: 15,
    zones: { below: "below critical", above: "at or above critical" },
  };

  it("is 50 + 0.2 × 180 − 2.5 × 10 − 0.01 × 180 × 10 = 43, at least 15 below the critical level, then 0", () => {
    const guide = guideUnderTest([{ form: kansas }]);
    expect(ask(guide, { soilTest: 10 }).unroundedLbPerAc).toBeCloseTo(43, 9);
    expect(ask(guide, { soilTest: 19 }).rateLbPerAc).toBe(15);
    expect(ask(guide, { soilTest: 20 })).toMatchObject({ rateLbPerAc: 0, zone: "at or above critical" });
  });

  /** Printed beside the equations: zero at Olsen 16 and 11, K 160. */
  it.each([
    ["corn", 0.7, 0.044, 16],
    ["soybean", 1.55, 0.14, 11],
    ["corn", 1.166, 0.0073, 160],
  ] as const)("reaches zero where %s prints its critical level", (crop, perYield, fall, printed) => {
    const form: Plane = { ...kansas, constant: 0, perYield, perTest: 0, perYieldTest: -fall, critical: null, least: 0 };
    const guide = guideUnderTest([{ form }]);
    const crossing = ask(guide, { crop, yieldGoalPerAc: 60, soilTest: 1 }).criticalLevel;
    expect(Math.abs((crossing ?? 0) - printed)).toBeLessThanOrEqual(0.3);
    expect(ask(guide, { crop, yieldGoalPerAc: 60, soilTest: printed + 1 }).rateLbPerAc).toBe(0);
  });

  it("counts a yield in the rule's own unit: sunflower (0.0225 − 0.0014 × 5) × 2,000 lb for 20 cwt = 31", () => {
    const form: Plane = { ...kansas, constant: 0, perYield: 0.0225, perTest: 0, perYieldTest: -0.0014, critical: null };
    const guide = guideUnderTest([{ form: { ...form, least: 0 }, yieldUnitsPer: 100 }]);
    const need = ask(guide, { crop: "sunflower", yieldGoalPerAc: 20, soilTest: 5 });
    expect(need.unroundedLbPerAc).toBeCloseTo(31, 9);
  });

  it("holds Nebraska's (25 − test) × 4: 80 lb at 5, nothing from 15", () => {
    const form: Plane = { ...kansas, constant: 100, perYield: 0, perTest: -4, perYieldTest: 0, critical: 15, least: 0 };
    const guide = guideUnderTest([{ form }]);
    expect(ask(guide, { soilTest: 5 }).rateLbPerAc).toBe(80);
    expect(ask(guide, { soilTest: 15 }).rateLbPerAc).toBe(0);
  });
});

describe("class tables", () => {
  const iowa = guideUnderTest([
    {
      form: {
        kind: "classes",
        criticalZone: "low",
        classes: [
          ["very low", 5, 100],
          ["low", 9, 75],
          ["optimum", 13, { times: 1, plus: 0 }],
          ["high", 18, 0],
          ["very high", null, 0],
        ],
      },
    },
  ]);

  it("puts Olsen 12 in optimum (Iowa State, Oct 2016) and feeds removal there: 180 × 0.35 = 63", () => {
    const rating = testRating({
      guide: iowa,
      nutrient: "P2O5",
      soilTest: 12,
      crop: null,
      cecMeq: null,
      extractant: null,
    });
    expect(rating.zone).toBe("optimum");
    expect(ask(iowa, { soilTest: 12 }).rateLbPerAc).toBe(63);
  });

  it("rounds the test to a whole number first, then counts the upper bound in", () => {
    const zones = [5.4, 5.5, 9.4, 9.5, 13.4, 13.5, 19].map((soilTest) => ask(iowa, { soilTest }).zone);
    expect(zones).toEqual(["very low", "low", "low", "optimum", "optimum", "high", "very high"]);
  });

  it("tells the level from which nothing is due", () => {
    expect(ask(iowa, { soilTest: 1 })).toMatchObject({ criticalLevel: 9, maintenanceLimit: 14 });
  });

  it("reads 90 lb for Ontario corn at Olsen 5, printed from 100 kg/ha at 0.9", () => {
    const guide = guideUnderTest([
      {
        lbPerRateUnit: 0.9,
        form: {
          kind: "classes",
          classes: [
            ["0-3", 3, 110],
            ["4-5", 5, 100],
            ["6-7", 7, 90],
            ["8 and more", null, 70],
          ],
        },
      },
    ]);
    expect([3, 5, 7].map((soilTest) => ask(guide, { soilTest }).rateLbPerAc)).toEqual([99, 90, 81]);
    expect(ask(guide, { soilTest: 5 }).maintenanceLimit).toBeNull();
  });

  it("takes class names that stand apart from the rates", () => {
    const classes = [
      ["low", 7],
      ["high", null],
    ] as const;
    const form: Plane = {
      kind: "plane",
      constant: 50,
      perYield: 0,
      perTest: -1,
      perYieldTest: 0,
      critical: null,
      least: 0,
      zones: { below: "below", above: "above" },
    };
    const guide = guideUnderTest([{ form, classes }]);
    expect([7.4, 7.5].map((soilTest) => ask(guide, { soilTest }).zone)).toEqual(["low", "high"]);
  });
});

describe("curves and points", () => {
  it("reads North Carolina's first curve on its falling side: 900 at 0, 900 − 650 + 116.75 = 366.75 at 50", () => {
    const guide = guideUnderTest(
      [
        {
          form: {
            kind: "indexCurve",
            square: 0.0467,
            linear: -13,
            constant: 900,
          },
        },
      ],
      { testUnit: "index", highestTest: 500 },
    );
    expect(ask(guide, { soilTest: 0 }).unroundedLbPerAc).toBe(900);
    expect(ask(guide, { soilTest: 50 }).unroundedLbPerAc).toBeCloseTo(366.75, 9);
    // The vertex is 13 / (2 × 0.0467) = 139.2; past it the curve would climb again.
    expect(ask(guide, { soilTest: 300 })).toMatchObject({ rateLbPerAc: 0, zone: "" });
  });

  it("reads Montana's points along straight lines, removal above the last", () => {
    const guide = guideUnderTest([
      {
        form: {
          kind: "points",
          points: [
            [4, 30],
            [12, 20],
            [16, 15],
          ],
          above: { times: 1, plus: 0 },
        },
      },
    ]);
    const at = (soilTest: number) => ask(guide, { soilTest }).unroundedLbPerAc;
    expect([2, 4, 8, 12, 14, 16].map(at)).toEqual([30, 30, 25, 20, 17.5, 15]);
    expect(at(17)).toBeCloseTo(63, 9);
    expect(ask(guide, { soilTest: 17 }).zone).toBe("");
  });
});

describe("choosing a rule", () => {
  it("needs no method where the rule is the same for all, and names them all", () => {
    const guide = guideUnderTest([{ form: inMiOh1995, extractants: ["bray", "olsen"] }], {
      extractants: ["bray", "olsen"],
    });
    expect(ask(guide, {}).extractants).toEqual(["bray", "olsen"]);
  });

  it("waits for a method where a guide's rules differ by it", () => {
    const lower = { ...inMiOh1995, critical: still(10) };
    const rules = [{ form: inMiOh1995 }, { form: lower, extractants: ["olsen"] as const }];
    const guide = guideUnderTest(rules, { extractants: ["bray", "olsen"] });
    expect(faultOf(() => ask(guide, {}))).toEqual({
      kind: "waiting",
      argument: "method",
      accepted: "under test takes Bray P1, Olsen",
    });
    expect(ask(guide, { extractant: "olsen" }).extractants).toEqual(["olsen"]);
  });

  it("names the approaches a guide publishes", () => {
    const guide = guideUnderTest([{ form: inMiOh1995, approaches: ["build"] }]);
    expect(faultOf(() => ask(guide, { approach: "sufficiency" }))).toMatchObject({
      argument: "approach",
      because: "under test publishes build; got sufficiency.",
    });
  });

  it("takes the rule of the approach that is asked for", () => {
    const flat = (fixed: number) => ({ kind: "classes", classes: [["all", null, fixed]] }) as const;
    const guide = guideUnderTest([
      { form: flat(80), approaches: ["build"] },
      { form: flat(40), approaches: ["sufficiency"] },
    ]);
    expect(ask(guide, { approach: "sufficiency" }).rateLbPerAc).toBe(40);
    expect(ask(guide, {}).rateLbPerAc).toBe(80);
  });
});
