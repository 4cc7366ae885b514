import { legumeCredit } from "../../../src/functions/soil/legume-credit";
import { manureCredit } from "../../../src/functions/soil/manure-credit";
import { nitrogenNeed } from "../../../src/functions/soil/nitrogen-need";
import { nitrogenOptimum } from "../../../src/functions/soil/nitrogen-optimum";
import { baseShare, soilCec } from "../../../src/functions/soil/cations";
import { chlorosisRisk } from "../../../src/functions/soil/chlorosis-risk";
import { microNeed } from "../../../src/functions/soil/micro-need";
import { saltLimit } from "../../../src/functions/soil/salt-limit";
import { sulfurNeed } from "../../../src/functions/soil/sulfur-need";
import type { RawArgument } from "../../../src/functions/frame";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { checkBulletin } from "../../../src/reference/table";

type AnyFunction = Parameters<typeof runFunction>[0];
const one = (fn: AnyFunction, ...call: RawArgument[]) => runFunction(fn, call)[0]?.[0];
const column = (...cells: (number | string | null)[]) => cells.map((cell) => [cell]);
const shownOf = (fn: AnyFunction, ...call: RawArgument[]) => {
  const shown = explain(fn, call);
  if (!("working" in shown)) throw new Error(shown.because);
  return shown;
};
const valueOf = (fn: AnyFunction, label: string, ...call: RawArgument[]) =>
  shownOf(fn, ...call).working.find((line) => line.label === label)?.value;

describe("the functions", () => {
  it("have the usual cautions where work can hurt someone or break a rule", () => {
    const said = (fn: AnyFunction) => (fn.cautions ?? []).join(" ");
    expect(said(nitrogenNeed)).toMatch(/Anhydrous ammonia/);
    expect(said(nitrogenNeed)).toMatch(/nutrient management rules/);
    expect(said(manureCredit)).toMatch(/setbacks/);
    expect(said(saltLimit)).toMatch(/label comes first/);
  });
});

describe("NITROGENNEED", () => {
  it("fills a column of fields, calm where one is half filled", () => {
    const cells = runFunction(nitrogenNeed, [
      "wheat",
      column(70, 90, 120, null),
      "Ohio",
      null,
      null,
      null,
      column(null, 20, null, null),
    ]);
    // 1.33 × 70 − 13; 1.33 × 90 − 13 − 20; printed to 110 bu only
    expect(cells[0]?.[0]).toBeCloseTo(80.1, 9);
    expect(cells[1]?.[0]).toBeCloseTo(86.7, 9);
    expect(cells[2]?.[0]).toMatchObject({
      code: "#N/A",
      message: expect.stringContaining("It is printed for 60 to 110."),
    });
    expect(cells[3]?.[0]).toEqual({ code: "#N/A", message: "waiting for yieldGoal" });
  });

  it("has no guide by default and says what a guide has for a crop it lacks", () => {
    expect(one(nitrogenNeed, "corn", 180)).toEqual({ code: "#N/A", message: "waiting for guide" });
    expect(one(nitrogenNeed, "corn", 180, "IN-MI-OH")).toEqual({
      code: "#N/A",
      message:
        "not available: IN-MI-OH publishes no nitrogen formula for corn that is known here. It has one for wheat. Regions that rate corn by economic return: see NITROGENOPTIMUM.",
    });
  });

  it("refuses a credit that the method holds already, in a sentence", () => {
    expect(one(nitrogenNeed, "corn", 180, "IA", null, 15, null, 40)).toEqual({
      code: "#VALUE!",
      message: "credits: this test has read manure, legume and earlier nitrogen already; leave it blank.",
    });
  });

  it("takes a stand in plants or in a word", () => {
    const sod = ["corn", 180, "SD", "alfalfa", 20, null, null, null] as const;
    expect([
      one(nitrogenNeed, ...sod, 4),
      one(nitrogenNeed, ...sod, "good"),
      one(nitrogenNeed, ...sod, "fair"),
    ]).toEqual([
      60,
      60,
      110, // 180 − 20 − 100, and − 50
    ]);
  });

  it("shows the terms, what is inside and which numbers to check", () => {
    const call = ["corn", 200, "NE", "soybean", 3, 2.5, null, "medium"] as const;
    expect(valueOf(nitrogenNeed, "Already inside the method", ...call)).toMatch(/organic matter and soil nitrate/);
    expect(valueOf(nitrogenNeed, "For the yield goal", ...call)).toBe(240);
    expect(valueOf(nitrogenNeed, "Organic matter", ...call)).toBeCloseTo(-70, 9);
    expect(valueOf(nitrogenNeed, "Credit for soybean", ...call)).toBe(-45);
    expect(valueOf(nitrogenNeed, "Check", ...call)).toBe(checkBulletin);
    expect(shownOf(nitrogenNeed, ...call).cites.map(({ mark }) => mark)).toEqual(["V", "M"]);
    expect(valueOf(nitrogenNeed, "Check", "wheat", 70, "Ohio")).toBeUndefined();
  });

  it("shows a need below zero as none", () => {
    const call = ["corn", 100, "SD", null, 150] as const;
    expect(one(nitrogenNeed, ...call)).toBe(0);
    expect(valueOf(nitrogenNeed, "Below zero, so none", ...call)).toBe(-50);
  });
});

describe("NITROGENOPTIMUM", () => {
  it("works a column of prices and refuses a curve without a top", () => {
    const cells = runFunction(nitrogenOptimum, [0.9, -0.0025, column(0.5, 1), 5]);
    expect(cells).toEqual([[expect.closeTo(160, 9)], [expect.closeTo(140, 9)]]);
    expect(one(nitrogenOptimum, 0.9, 0.0025, 0.5, 5)).toEqual({
      code: "#VALUE!",
      message: "quadratic: must be below 0: a curve that does not bend down has no best rate.",
    });
    expect(valueOf(nitrogenOptimum, "Held at", 0.9, -0.0025, 0.5, 5, 120)).toBe("plateau");
  });
});

describe("LEGUMECREDIT and MANURECREDIT", () => {
  it("give nothing for a crop that is no legume and a sentence where none is printed", () => {
    expect(one(legumeCredit, "corn", null, "NE")).toBe(0);
    expect(one(legumeCredit, "chickpea", null, "NE", "corn")).toEqual({
      code: "#N/A",
      message:
        "not available: NE publishes no nitrogen credit for chickpea before corn that is known here. Ask your extension office and type the figure.",
    });
    expect(one(legumeCredit, "soybean", null, "ND", null, null, 3)).toMatchObject({
      message: "season must be between 1 and 2; got 3.",
    });
  });

  it("ask whether gallons were typed for thousands of gallons and wait for the placement", () => {
    expect(one(manureCredit, "swine finishing", "N", 3000, "injected", 0, "IA")).toMatchObject({
      message: "rate must be between 0 and 60 1,000 gal/ac or ton/ac; got 3,000. Did you mean 3?",
    });
    expect(one(manureCredit, "swine finishing", "N", 3, null, 0, "IA")).toEqual({
      code: "#N/A",
      message: "waiting for placement",
    });
  });

  it("say whether a content is typical and what phosphate comes along", () => {
    const call = ["dairy slurry", "N", 10, "injected", 0, "IA"] as const;
    expect(valueOf(manureCredit, "Content, typical", ...call)).toBe(31);
    expect(valueOf(manureCredit, "P2O5 spread with it, typical", ...call)).toBe(150);
    expect(valueOf(manureCredit, "Check", ...call)).toBe(checkBulletin);
    expect(valueOf(manureCredit, "Content, by analysis", ...call, 28)).toBe(28);
  });
});

describe("sulfur, micronutrients, salt, cations", () => {
  it("wait, refuse and answer in sentences", () => {
    expect(one(sulfurNeed, "wheat", 60, null, "KS", 10)).toEqual({
      code: "#N/A",
      message: "waiting for organicMatter",
    });
    expect(one(microNeed, "zinc", "corn", 0.7, null, "NE")).toEqual({
      code: "#N/A",
      message:
        "not available: NE publishes no rate of Zn for this test, which is in the range where it may pay: apply below 0.8 ppm; the page prints no rate. Ask your extension office for the rate.",
    });
    expect(one(saltLimit, "wheat", 30, "in furrow")).toMatchObject({ code: "#N/A" });
    expect(one(saltLimit, "corn", 30, "2 x 2", "clay")).toBe(140);
    expect(one(soilCec, 1600, 240, 195)).toEqual({ code: "#N/A", message: "waiting for bufferPH" });
    expect(one(chlorosisRisk, 70, 1)).toMatchObject({ message: "carbonate must be between 0 and 60 %; got 70." });
  });

  it("rate a column of soils for chlorosis", () => {
    expect(runFunction(chlorosisRisk, [column(1, 4, 8), 0.4])).toEqual([["low"], ["moderate"], ["high"]]);
  });

  it("flag a calcareous soil and spill shares that add to 100", () => {
    expect(valueOf(soilCec, "Look twice", 3000, 300, 200, null, null, null, 7.9)).toMatch(/Free lime/);
    const rows = runFunction(baseShare, [1600, 240, 195, null, 6.8, "SMP"]);
    const shares = rows.slice(1, 6).map((row) => Number(row[2]));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, 9);
  });

  it("show Michigan's limits of each nutrient", () => {
    expect(valueOf(saltLimit, "Most K2O, moist soil", "soybean", 30, "2x2 band")).toBe(80);
    expect(valueOf(saltLimit, "Most N, moist soil", "soybean", 30, "2x2 band")).toBeUndefined();
  });
});
