import { liquidRate } from "../../../src/functions/materials/liquid-rate";
import { nutrientPrice } from "../../../src/functions/materials/nutrient-price";
import { productRate } from "../../../src/functions/materials/product-rate";
import { spreadRate } from "../../../src/functions/materials/spread-rate";
import { runFunction } from "../../../src/functions/frame/run";
import type { RawArgument } from "../../../src/functions/frame";
import { liquidWords } from "../../../src/functions/materials/material-words";
import { liquidDensity } from "../../../src/reference/materials";
import { explain } from "../../../src/functions/frame/explain";

const one = (fn: Parameters<typeof runFunction>[0], ...call: RawArgument[]) => runFunction(fn, call)[0]?.[0];

describe("PRODUCTRATE", () => {
  it("works a column of needs on one analysis: 60 / 0.60 and 90 / 0.60", () => {
    expect(runFunction(productRate, [[[60], [90], [null]], 60])).toEqual([
      [100],
      [150],
      [{ code: "#N/A", message: "waiting for need" }],
    ]);
  });

  it("asks about an analysis typed as a share, and takes one typed with its sign", () => {
    expect(one(productRate, 60, 0.46)).toEqual({
      code: "#VALUE!",
      message: "analysis is in percent: enter 46, not 0.46.",
    });
    expect(one(productRate, 46, "46%")).toBe(100);
  });

  it("refuses an analysis of 0 or above 100", () => {
    expect(one(productRate, 60, 0)).toMatchObject({ message: expect.stringContaining("analysis must be between") });
    expect(one(productRate, 60, 101)).toMatchObject({ message: expect.stringContaining("analysis must be between") });
  });
});

describe("NUTRIENTPRICE", () => {
  it("takes other nutrients as nothing when they are left out", () => {
    expect(one(nutrientPrice, 996, 46)).toBeCloseTo(996 / 920, 12);
    expect(one(nutrientPrice, 700, 46, 216)).toBeCloseTo(484 / 920, 12);
  });

  it("says when nothing is left to price", () => {
    expect(one(nutrientPrice, 300, 46, 301)).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining("nothing is left to price"),
    });
  });
});

describe("LIQUIDRATE", () => {
  it("takes a liquid by name at its published weight: 100 / (10.67 × 0.28)", () => {
    expect(one(liquidRate, 100, 28, "UAN 28")).toBeCloseTo(100 / (10.67 * 0.28), 9);
    expect(one(liquidRate, 20, 34, "10-34-0")).toBeCloseTo(20 / (11.65 * 0.34), 9);
  });

  it("cites the row a named liquid stands in, and asks to check what comes from memory", () => {
    const seen = explain(liquidRate, [100, 32, "32-0-0"]);
    expect(seen).toMatchObject({ cites: [{ mark: "V", source: "fertilizer-physical-sheet" }] });
    const remembered = explain(liquidRate, [10, 17, "potassium thiosulfate"]);
    expect(remembered).toMatchObject({ cites: [{ mark: "M" }] });
    expect(JSON.stringify(remembered)).toContain("Check against the current bulletin.");
    expect(explain(liquidRate, [100, 28, 10.67])).toMatchObject({ cites: [] });
  });

  it("does not take the name of a dry material", () => {
    expect(one(liquidRate, 100, 46, "urea")).toMatchObject({ message: expect.stringContaining("lbPerGallon") });
  });
});

describe("SPREADRATE", () => {
  it("works a column of catches: 10 and 20 lb over 50 ft × 87.12 ft, a tenth of an acre", () => {
    const rates = runFunction(spreadRate, [[[10], [20]], 50, 87.12]).map(([rate]) => Number(rate));
    expect(rates[0]).toBeCloseTo(100, 9);
    expect(rates[1]).toBeCloseTo(200, 9);
  });
});

it("offers every liquid whose gallon has a published weight, and no other", () => {
  expect(Object.keys(liquidWords.words).sort()).toEqual(liquidDensity.rows.map(({ material }) => material).sort());
});
