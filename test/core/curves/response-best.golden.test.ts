import { responseBest } from "../../../src/core/curves/response-best";
import { responseRange } from "../../../src/core/curves/response-range";
import { responseYield } from "../../../src/core/curves/response-yield";
import { faultOf } from "../fault-of";

const open = { highestRate: null };

describe("worked cases", () => {
  it("quadratic 98, 0.62, -0.00155 at N $0.50 and corn $4.50: 164.158 lb, 158.009 bu, $187.96 over no N", () => {
    const best = responseBest({ model: "quadratic", parameters: [98, 0.62, -0.00155], priceRatio: 0.5 / 4.5, ...open });
    expect(best.bestRate).toBeCloseTo(164.158, 3);
    expect(best.yieldBuPerAc).toBeCloseTo(158.009, 3);
    expect(4.5 * best.netGainBuPerAc).toBeCloseTo(187.96, 2);
    expect(best.heldAt).toBe("nothing");
  });
  it("mitscherlich 210 (1 - exp(-0.0125 (x + 45))) at 0.10: 216.413 and 202.0", () => {
    const parameters = [210, 210 * Math.exp(-0.0125 * 45), 0.0125];
    const best = responseBest({ model: "mitscherlich", parameters, priceRatio: 0.1, ...open });
    expect(best.bestRate).toBeCloseTo(216.413, 3);
    expect(best.yieldBuPerAc).toBeCloseTo(202, 10);
  });
  it("quadratic-plateau 0.3921153665, 0.0604631412, -0.0023715371 at 0.01: 10.6393", () => {
    const parameters = [0.3921153665, 0.0604631412, -0.0023715371];
    expect(responseBest({ model: "quadratic-plateau", parameters, priceRatio: 0.01, ...open }).bestRate).toBeCloseTo(
      10.6393,
      4,
    );
  });
  it("square root 50 + 6 √x - 0.1 x at 0.2: (6 / 0.6)² = 100, yield 50 + 60 - 10", () => {
    const best = responseBest({ model: "square-root", parameters: [50, 6, -0.1], priceRatio: 0.2, ...open });
    expect([best.bestRate, best.yieldBuPerAc]).toEqual([expect.closeTo(100, 9), expect.closeTo(100, 9)]);
  });
  it("linear-plateau: the join while a unit brings more than it costs, nothing after", () => {
    const at = (priceRatio: number) =>
      responseBest({ model: "linear-plateau", parameters: [100, 0.5, 130], priceRatio, ...open }).bestRate;
    expect([at(0.1), at(0.49), at(0.5), at(0.6)]).toEqual([130, 130, 0, 0]);
  });
});

describe("the edge of the trial", () => {
  const line = { model: "linear", parameters: [100, 0.4], priceRatio: 0.1 } as const;
  it("a line that pays stops at the highest rate, and asks for it when it is not known", () => {
    expect(responseBest({ ...line, highestRate: 180 })).toMatchObject({ bestRate: 180, heldAt: "highest rate" });
    expect(faultOf(() => responseBest({ ...line, ...open }))).toMatchObject({
      kind: "refused",
      argument: "highestRate",
    });
  });
  it("a best rate past the trial is held at its end; the curve's own is kept beside it", () => {
    const best = responseBest({
      model: "quadratic",
      parameters: [98, 0.62, -0.00155],
      priceRatio: 0.1,
      highestRate: 150,
    });
    expect(best).toMatchObject({ bestRate: 150, heldAt: "highest rate" });
    expect(best.freeRate).toBeCloseTo(0.52 / 0.0031, 9);
  });
  it("no input where the first unit brings less than it costs", () => {
    const best = responseBest({ model: "quadratic", parameters: [98, 0.05, -0.00155], priceRatio: 0.1, ...open });
    expect(best).toMatchObject({ bestRate: 0, heldAt: "no input", gainBuPerAc: 0 });
  });
  it.each([
    ["linear", [100, 0.1]],
    ["linear-plateau", [100, 0.1, 130]],
    ["quadratic", [98, 0.1, -0.00155]],
    ["quadratic-plateau", [98, 0.1, -0.00155]],
    ["mitscherlich", [200, 10, 0.01]],
    ["mitscherlich-zero", [10, 0.01]],
  ] as const)("no input where the first unit of a %s brings just what it costs, 0.1 bu", (model, parameters) => {
    const best = responseBest({ model, parameters, priceRatio: 0.1, highestRate: 200 });
    expect(best).toMatchObject({ bestRate: 0, heldAt: "no input", netGainBuPerAc: 0 });
    expect(responseBest({ model, parameters, priceRatio: 0.2, highestRate: 200 }).bestRate).toBe(0);
  });
  it("a square root that rises faster than its cost all the way needs the highest rate too", () => {
    const rising = { model: "square-root", parameters: [50, 6, 0.3], priceRatio: 0.2 } as const;
    expect(faultOf(() => responseBest({ ...rising, ...open }))).toMatchObject({ argument: "highestRate" });
    expect(responseBest({ ...rising, highestRate: 100 }).bestRate).toBe(100);
  });
  it.each([
    ["quadratic", [98, 0.62, 0.001], "below 0"],
    ["quadratic", [98, 0.62, 0], "below 0"],
    ["square-root", [50, -6, -0.1], "above 0"],
    ["square-root", [50, 0, -0.1], "above 0"],
    ["mitscherlich", [200, 90, -0.01], "above 0"],
    ["mitscherlich", [200, 90, 0], "above 0"],
  ] as const)("refuses a %s that does not bend down: %j", (model, parameters, because) => {
    const fault = faultOf(() => responseBest({ model, parameters, priceRatio: 0.1, ...open }));
    expect(fault).toMatchObject({ argument: "parameters", because: expect.stringContaining(because) });
  });
  it("refuses the wrong number of parameters, naming what it takes", () => {
    expect(faultOf(() => responseBest({ ...line, parameters: [1, 2, 3], ...open }))).toEqual({
      kind: "refused",
      argument: "parameters",
      because: "linear takes 2 numbers (intercept, slope); got 3.",
    });
    expect(faultOf(() => responseBest({ ...line, parameters: [1, 2e12], ...open }))).toMatchObject({
      kind: "outOfRange",
      argument: "parameters",
    });
  });
});

describe("responseRange", () => {
  const prices = { inputPriceUsd: 0.5, cropPriceUsdPerBu: 4.5, withinUsdPerAc: 1, highestRate: null };
  it("on a parabola reaches √(1 / (price × bend)) to either side: √(1 / (4.5 × 0.00155)) = 11.9737", () => {
    const range = responseRange({ model: "quadratic", parameters: [98, 0.62, -0.00155], ...prices });
    expect(range.best.rate - range.low.rate).toBeCloseTo(11.9737, 3);
    expect(range.high.rate - range.best.rate).toBeCloseTo(11.9737, 3);
    expect(range.low.returnUsdPerAc).toBeCloseTo(range.best.returnUsdPerAc - 1, 6);
  });
  it("past a join loses only the input: $1 / $0.50 = 2 units; before it 1 / (4.5 × 0.5 - 0.5) = 0.5714", () => {
    const range = responseRange({ model: "linear-plateau", parameters: [100, 0.5, 130], ...prices });
    expect(range.high.rate).toBeCloseTo(132, 6);
    expect(range.low.rate).toBeCloseTo(130 - 1 / 1.75, 6);
  });
  it("stays within 0 and the highest rate tested", () => {
    const flat = responseRange({
      model: "quadratic",
      parameters: [98, 0.62, -0.00155],
      ...prices,
      withinUsdPerAc: 500,
      highestRate: 170,
    });
    expect([flat.low.rate, flat.high.rate]).toEqual([0, 170]);
  });
});

describe("responseYield", () => {
  it("quadratic-plateau 100 + x - 0.0025 x² is 200 from x = 200 on", () => {
    const at = (rate: number) => responseYield({ model: "quadratic-plateau", parameters: [100, 1, -0.0025], rate });
    expect(at(100).yieldBuPerAc).toBe(175);
    expect([at(200).yieldBuPerAc, at(300).yieldBuPerAc]).toEqual([200, 200]);
    expect(at(300).gainBuPerAc).toBe(100);
  });
  it("refuses a plateau whose curve bends up", () => {
    const up = () => responseYield({ model: "quadratic-plateau", parameters: [100, 1, 0.1], rate: 10 });
    expect(faultOf(up)).toMatchObject({ argument: "parameters" });
  });
});
