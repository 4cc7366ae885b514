import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { certainProfit } from "../../../src/functions/money/certain-profit";
import { planDominance } from "../../../src/functions/money/plan-dominance";
import { profitOdds, profitRange } from "../../../src/functions/money/risk";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const only = (cells: readonly (readonly unknown[])[]) => Number(cells[0]?.[0]);
const corn = [120, 190, 230, 3.2, 4.5, 6, 700] as const;

describe("PROFITODDS on a sheet", () => {
  it("fills a column of costs, odds falling", () => {
    const cells = runFunction(profitOdds, [120, 190, 230, 3.2, 4.5, 6, [[600], [700], [800]], -0.3]);
    const [low, middle, high] = cells.map(([cell]) => Number(cell));
    expect(low).toBeGreaterThan(middle ?? 1);
    expect(middle).toBeGreaterThan(high ?? 1);
  });
  it("takes blank as no correlation, no loss and a triangle", () => {
    expect(runFunction(profitOdds, [...corn])).toEqual(runFunction(profitOdds, [...corn, 0, 0, "triangle", 0, 0]));
    expect(runFunction(profitOdds, [...corn])).not.toEqual(runFunction(profitOdds, [...corn, 0, 0, "PERT"]));
  });
  it("names what is out of order or out of range", () => {
    expect(messageOf(runFunction(profitOdds, [120, 110, 230, 3.2, 4.5, 6, 700]))).toBe(
      "lowYield: must not be above likelyYield (110 bu/ac); got 120.",
    );
    expect(messageOf(runFunction(profitOdds, [...corn, -30]))).toBe("correlation must be between −1 and 1; got −30.");
    expect(messageOf(runFunction(profitOdds, [...corn, 0, 0, "normal"]))).toBe(
      'shape "normal" is not known here. Use: triangular, PERT.',
    );
  });
  it("gives no correlation of its own but a published one to hold against", () => {
    expect(JSON.stringify(explain(profitOdds, [...corn]))).toContain("-0.72 to -0.31, mean -0.51");
  });
});

describe("PROFITRANGE on a sheet", () => {
  it("shows the certain profit only where a risk aversion is given", () => {
    const plain = runFunction(profitRange, [...corn]);
    const careful = runFunction(profitRange, [...corn, null, null, null, null, null, null, 0.005]);
    expect(careful).toHaveLength(plain.length + 1);
    const certain = Number(careful.at(-1)?.[1]);
    expect(certain).toBeLessThan(Number(plain[4]?.[1]));
    const shown = explain(profitRange, [...corn, null, null, null, null, null, null, 0.005]);
    expect(JSON.stringify(shown)).toContain("coin flip");
  });
  it("agrees with PROFITODDS on the chance of a loss", () => {
    const loss = Number(runFunction(profitRange, [...corn, -0.4, 50])[6]?.[1]);
    expect(loss).toBeCloseTo(1 - only(runFunction(profitOdds, [...corn, -0.4, 50])), 12);
  });
  it("names what is out of order or out of range", () => {
    const refused = (...call: readonly number[]) => messageOf(runFunction(profitRange, call));
    expect(refused(200, 190, 230, 3.2, 4.5, 6, 700)).toBe(
      "lowYield: must not be above likelyYield (190 bu/ac); got 200.",
    );
    expect(refused(120, 190, 230, 3.2, 7, 6, 700)).toBe("likelyPrice: must not be above highPrice (6 $/bu); got 7.");
    expect(refused(...corn, 1.2)).toBe("correlation must be between −1 and 1; got 1.2.");
  });
  it("asks about a tail typed in percent points", () => {
    expect(messageOf(runFunction(profitRange, [...corn, null, null, null, null, null, 5]))).toBe(
      "tail is a rate: enter 5 % as 5% or 0.05.",
    );
  });
});

describe("CERTAINPROFIT and PLANDOMINANCE on a sheet", () => {
  it("pass blank rows over: the mean of 0 and 100", () => {
    expect(only(runFunction(certainProfit, [[[0], [null], [100]], 0]))).toBe(50);
  });
  it("wait for a chance that is still missing", () => {
    expect(messageOf(runFunction(certainProfit, [[[0], [100]], 0.01, [[0.5], [null]]]))).toBe("waiting for chances");
  });
  it("answer in words", () => {
    const cells = runFunction(planDominance, [
      [[10], [20]],
      [[10], [20]],
    ]);
    expect(cells[1]).toEqual(["Everyone prefers", "no difference"]);
    expect(messageOf(runFunction(planDominance, [[[10]], [[10], [20]]]))).toBe("a needs at least 2 values; got 1.");
  });
});
