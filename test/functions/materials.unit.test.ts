import { nutrientPrice, productRate } from "../../src/functions/materials";
import { runFunction } from "../../src/functions/frame/run";
import type { RawArgument } from "../../src/functions/frame";

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
