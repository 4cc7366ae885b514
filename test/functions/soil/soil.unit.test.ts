import { limeNeed } from "../../../src/functions/soil/lime-need";
import { limeQuality, limeRate } from "../../../src/functions/soil/lime-material";
import { phosphateNeed, potashNeed } from "../../../src/functions/soil/nutrient-need";
import { testConvert } from "../../../src/functions/soil/test-convert";
import { testRating } from "../../../src/functions/soil/test-rating";
import { limitingNutrient } from "../../../src/functions/nutrients/limiting-nutrient";
import type { RawArgument } from "../../../src/functions/frame";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { checkBulletin } from "../../../src/reference/table";

const one = (fn: Parameters<typeof runFunction>[0], ...call: RawArgument[]) => runFunction(fn, call)[0]?.[0];
const column = (...cells: (number | string | null)[]) => cells.map((cell) => [cell]);
const linesOf = (fn: Parameters<typeof runFunction>[0], ...call: RawArgument[]) => {
  const shown = explain(fn, call);
  if (!("working" in shown)) throw new Error(shown.because);
  return shown.working;
};

describe("LIMENEED", () => {
  it("fills a column of fields, calm where no buffer pH is needed", () => {
    const cells = runFunction(limeNeed, [column(6.4, 5.9, 6.6, 7.3), column(6.9, 6.6, null, null), 6.5, "IN-MI-OH"]);
    // (60.4 − 0.87 × 69) × 0.9 = 0.333; (60.4 − 0.87 × 66) × 0.9 = 2.682
    expect(cells[0]?.[0]).toBeCloseTo(0.333, 9);
    expect(cells[1]?.[0]).toBeCloseTo(2.682, 9);
    expect(cells[2]?.[0]).toBe(0);
    expect(cells[3]?.[0]).toBe(0);
  });

  it("waits for the buffer pH of an acid soil and for the method, with no region taken silently", () => {
    expect(one(limeNeed, 5.9, null, 6.5, "IN-MI-OH")).toEqual({ code: "#N/A", message: "waiting for bufferPH" });
    expect(one(limeNeed, 5.9, 6.6, 6.5)).toEqual({ code: "#N/A", message: "waiting for method" });
  });

  it("asks about a pH and a lime test index typed without their point", () => {
    expect(one(limeNeed, 59, 6.6, 6.5, "IN-MI-OH")).toMatchObject({ message: expect.stringContaining("mean 5.9?") });
    expect(one(limeNeed, 5.9, 66, 6.5, "IN-MI-OH")).toMatchObject({ message: expect.stringContaining("mean 6.6?") });
    expect(one(limeNeed, 5.9, 6.6, 65, "IN-MI-OH")).toMatchObject({ message: expect.stringContaining("mean 6.5?") });
  });

  it("asks whether pH and buffer pH changed places", () => {
    expect(one(limeNeed, 6.6, 5.9, 6.5, "IN-MI-OH")).toMatchObject({
      message: expect.stringContaining("Are pH and bufferPH the wrong way round?"),
    });
  });

  it("finds a method by its other names", () => {
    for (const method of ["IA", "Iowa", "iowa smp"]) expect(one(limeNeed, 5.8, 6.4, 6.5, method)).toBeCloseTo(1.75, 9);
  });

  it("reads exchangeable acidity in place of a buffer in Pennsylvania", () => {
    expect(one(limeNeed, 5.8, null, 7, "PA", null, null, 4.5)).toBeCloseTo(2.25, 9);
  });

  it("states in the working what its tons are made of and how they are converted", () => {
    const lines = linesOf(limeNeed, 5.9, 6.6, 6.5, "IN-MI-OH", 4);
    expect(lines).toContainEqual({ label: "Made of", value: expect.stringContaining("90 %"), unit: "" });
    expect(lines).toContainEqual({ label: "Share counted as fully effective", value: 90, unit: "%" });
    expect(lines).toContainEqual({ label: "Depth 4 in instead of 8 in", value: 0.5, unit: "times" });
    expect(lines).toContainEqual({ label: "Check", value: checkBulletin, unit: "" });
  });

  it("says why there is no lime", () => {
    expect(linesOf(limeNeed, 6.6, null, 6.5, "IN-MI-OH")).toContainEqual({
      label: "No lime",
      value: "the soil is at or above its target",
      unit: "",
    });
  });
});

describe("LIMEQUALITY", () => {
  const shares = [[5, 15, 30, 50]];

  it("takes a row or a column of shares", () => {
    expect(one(limeQuality, 90, shares, "OH ENP")).toBeCloseTo(63.9, 9);
    expect(one(limeQuality, 90, column(5, 15, 30, 50), "Ohio")).toBeCloseTo(63.9, 9);
  });

  it("asks about a CCE typed as a share", () => {
    expect(one(limeQuality, 0.9, shares, "OH ENP")).toMatchObject({
      message: "cce is in percent: enter 90, not 0.9.",
    });
  });

  it("waits for the system and for a blank share", () => {
    expect(one(limeQuality, 90, shares)).toMatchObject({ message: "waiting for system" });
    expect(one(limeQuality, 90, [[5, null, 30, 50]], "OH ENP")).toMatchObject({
      message: "waiting for finenessShares",
    });
  });

  it("works a column of limes on one screening", () => {
    expect(runFunction(limeQuality, [column(90, 100), shares, "OH ENP"])).toEqual([
      [expect.closeTo(63.9, 9)],
      [expect.closeTo(71, 9)],
    ]);
  });
});

describe("LIMERATE", () => {
  it("takes what LIMENEED and LIMEQUALITY give", () => {
    const need = one(limeNeed, 5.9, 6.6, 6.5, "IN-MI-OH");
    const quality = one(limeQuality, 90, [[5, 15, 30, 50]], "OH ENP");
    if (typeof need !== "number" || typeof quality !== "number") throw new Error("expected numbers");
    expect(one(limeRate, need, quality)).toBeCloseTo(2.682 / 0.639, 9);
  });

  it("asks about a quality typed as a share", () => {
    expect(one(limeRate, 2, 0.8)).toMatchObject({ message: "quality is in percent: enter 80, not 0.8." });
  });

  it("advises to split a heavy rate", () => {
    const labels = linesOf(limeRate, 4.5, 100).map(({ label }) => label);
    expect(labels.some((label) => label.startsWith("With tillage, split it"))).toBe(true);
    expect(linesOf(limeRate, 1, 100).some(({ label }) => label.startsWith("With tillage"))).toBe(false);
  });
});

describe("PHOSPHATENEED and POTASHNEED", () => {
  it("work a column of fields", () => {
    const phosphate = runFunction(phosphateNeed, [
      column("soybean", "corn", "wheat", null),
      column(57, 205, 88, 180),
      column(11, 22, 26, 20),
      "IN-MI-OH",
    ]);
    // (20−11)×5 + 45.6 = 90.6; 71.75; (30−26)×5 + 44 = 64
    expect(phosphate.map(([cell]) => cell)).toEqual([90, 70, 65, { code: "#N/A", message: "waiting for crop" }]);
  });

  it("have no guide by default", () => {
    expect(one(phosphateNeed, "corn", 180, 12)).toEqual({ code: "#N/A", message: "waiting for guide" });
  });

  it("wait for the CEC that potash levels turn on", () => {
    expect(one(potashNeed, "corn", 180, 100, "IN-MI-OH")).toEqual({ code: "#N/A", message: "waiting for cec" });
    expect(one(potashNeed, "corn", 180, 100, "IN-MI-OH", 10)).toBe(85);
  });

  it("refuse an extraction the guide does not define and say which it takes", () => {
    expect(one(phosphateNeed, "corn", 180, 12, "IN-MI-OH", "Bray P1")).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^method: IN-MI-OH is defined for Mehlich-3, Mehlich-3 ICP; got Bray P1\./),
    });
    expect(one(phosphateNeed, "corn", 180, 12, "IN-MI-OH", "M3")).toBe(105);
  });

  it("leave the build-up out by sufficiency", () => {
    expect(one(phosphateNeed, "corn", 180, 12, "IN-MI-OH", null, "sufficiency")).toBe(65);
  });

  it("take the level of a rotation partner that asks for more", () => {
    expect(one(phosphateNeed, "corn", 180, 26, "IN-MI-OH", null, null, "wheat")).toBe(85);
  });

  it("ask about tests that read like lb/ac", () => {
    expect(one(phosphateNeed, "corn", 180, 600, "IN-MI-OH")).toMatchObject({
      message: "soilTest must be between 0 and 500 ppm; got 600. Did you mean 300?",
    });
    const lines = linesOf(phosphateNeed, "corn", 180, 400, "IN-MI-OH");
    expect(lines.some(({ label, value }) => label === "Unit" && String(value).includes("twice the ppm"))).toBe(true);
  });

  it("show zone, levels, build-up, maintenance and the guide's edition", () => {
    const lines = linesOf(potashNeed, "soybean", 60, 100, "IN-MI-OH", 10);
    expect(lines).toContainEqual({ label: "Zone", value: "deficient", unit: "" });
    expect(lines).toContainEqual({ label: "Critical level", value: 120, unit: "ppm" });
    expect(lines).toContainEqual({ label: "Nothing recommended from", value: 170, unit: "ppm" });
    expect(lines).toContainEqual({ label: "Build-up", value: 30, unit: "lb/ac" });
    expect(lines).toContainEqual({ label: "Maintenance", value: 89, unit: "lb/ac" });
    expect(lines[0]?.value).toBe("IN-MI-OH, Tri-State Fertilizer Recommendations, 2020");
  });
});

describe("a guide of another region", () => {
  it("asks for its region, years and method by name", () => {
    expect(one(phosphateNeed, "corn", 180, 30, "Illinois")).toEqual({
      code: "#N/A",
      message: "waiting for group: IL prints high supply, medium supply, low supply",
    });
    expect(one(phosphateNeed, "corn", 180, 30, "IL", null, null, null, "high")).toBe(89);
    expect(one(phosphateNeed, "corn", 150, 25, "MO")).toMatchObject({
      message: "waiting for years: MO spreads build-up over 4 or 8 years",
    });
    expect(one(phosphateNeed, "corn", 200, 12, "IA")).toMatchObject({
      message: "waiting for method: IA takes Bray P1, Mehlich-3 colorimetric, Mehlich-3 ICP, Olsen",
    });
  });
  it("takes equation numbers typed as numbers, and tests in another unit", () => {
    // 0.0116 × 40² − 2.75 × 40 + 150 = 58.56
    expect(one(potashNeed, "corn", 150, 40, "NC", null, null, null, 14)).toBe(59);
    expect(one(phosphateNeed, "corn", 180, 15, "IL", null, null, null, "high", null, "ppm")).toBe(89);
  });
  it("shows the step from the unit that was typed", () => {
    const lines = linesOf(phosphateNeed, "corn", 180, 15, "IL", null, null, null, "high", null, "ppm");
    expect(lines).toContainEqual({ label: "Soil test as typed", value: 15, unit: "ppm" });
    expect(lines).toContainEqual({
      label: "Soil test",
      value: "30 lb/ac, Bray P1 or Mehlich-3 colorimetric, 7 in",
      unit: "",
    });
    const own = linesOf(phosphateNeed, "corn", 180, 30, "IL", null, null, null, "high", null, "lb/ac");
    expect(own.some(({ label }) => label === "Soil test as typed")).toBe(false);
    expect(one(testRating, "P", 60, "KS", "corn", null, null, null, "lb/ac")).toBe("at or above critical");
  });
  it("takes the class on the report in South Carolina", () => {
    expect(one(phosphateNeed, "wheat", 60, "Medium", "SC")).toBe(40);
    expect(linesOf(phosphateNeed, "wheat", 60, "medium", "SC")).toContainEqual({
      label: "Soil test",
      value: "medium by the report",
      unit: "",
    });
  });
  it("says what it does not hold", () => {
    expect(one(potashNeed, "corn", 180, 150, "MN")).toEqual({
      code: "#N/A",
      message:
        'not available: MN, as far as we hold it, publishes no K2O rate for corn in class "below critical". Take it from the current bulletin.',
    });
  });
});

describe("TESTCONVERT", () => {
  it("is the visible step between a laboratory and a guide", () => {
    const bray = one(testConvert, 45, "M3", "Bray");
    if (typeof bray !== "number") throw new Error("expected a number");
    expect(bray).toBeCloseTo(33.333, 3);
    expect(one(phosphateNeed, "corn", 140, bray, "IN-MI-OH-1995", "Bray P1")).toBe(35);
  });
  it("shows the equation, what it holds for and what the others give", () => {
    const lines = linesOf(testConvert, 40, "Mehlich-3", "Bray P1");
    expect(lines).toContainEqual({ label: "Equation", value: "M3 / 1.35", unit: "" });
    expect(lines).toContainEqual({ label: "Holds for", value: "Tri-State agronomic range", unit: "" });
    expect(lines.filter(({ label }) => label.startsWith("By "))).toHaveLength(2);
    const outside = linesOf(testConvert, 5, "Mehlich-3 ICP", "Bray P1", null, null, "Ohio ICP");
    expect(outside.some(({ label }) => label === "Outside")).toBe(true);
  });
  it("refuses a pair nobody published and names those there are", () => {
    expect(one(testConvert, 10, "Olsen", "Mehlich-3")).toEqual({
      code: "#N/A",
      message:
        "not available: what we hold publishes no equation from Olsen to Mehlich-3. Into Mehlich-3: from Bray P1, ammonium acetate. Out of Olsen: none.",
    });
  });
});

describe("LIMITINGNUTRIENT", () => {
  const list = [
    ["potash", 108, null],
    ["zinc", 1, null],
    ["P", 15, "M3"],
    ["N", null, null],
    [null, null, null],
  ];
  it("spills a ranked table and says that it is no share of yield", () => {
    const cells = runFunction(limitingNutrient, ["corn", list, "IN-MI-OH", 10]);
    expect(cells.map((row) => row[0])).toEqual(["Nutrient", "P2O5", "K2O", "Zn"]);
    expect(cells[0]?.[3]).toMatch(/not of yield/);
    expect(cells[3]).toEqual(["Zn", 1, "", "not published", "IN-MI-OH publishes no Zn critical level"]);
  });
  it("waits for tests, and passes an error of a cell on", () => {
    expect(one(limitingNutrient, "corn", [[null, null]], "IN-MI-OH", 10)).toMatchObject({
      message: "waiting for tests",
    });
    expect(one(limitingNutrient, "corn", [["P", { code: "#DIV/0!" }]], "IN-MI-OH")).toEqual({ code: "#DIV/0!" });
    expect(one(limitingNutrient, "corn", [["X", 3]], "IN-MI-OH")).toMatchObject({ code: "#VALUE!" });
  });
});

describe("TESTRATING", () => {
  it("rates a column of tests in words", () => {
    const cells = runFunction(testRating, ["P", column(12, 25, 60, null), "IN-MI-OH", "corn"]);
    expect(cells.map(([cell]) => cell)).toEqual([
      "deficient",
      "maintenance",
      "sufficient",
      { code: "#N/A", message: "waiting for soilTest" },
    ]);
    expect(one(testRating, "potash", 110, "IN-MI-OH", null, 12)).toBe("deficient");
  });

  it("waits for what the classes turn on", () => {
    expect(one(testRating, "P", 25, "IN-MI-OH")).toEqual({ code: "#N/A", message: "waiting for crop" });
    expect(one(testRating, "K", 110, "IN-MI-OH")).toEqual({ code: "#N/A", message: "waiting for cec" });
  });

  it("rates P and K only", () => {
    expect(one(testRating, "Zn", 1, "IN-MI-OH")).toMatchObject({
      message: "nutrient: guides rate soil-test P and K here; got Zn.",
    });
  });
});
