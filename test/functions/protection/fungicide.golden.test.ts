import { runFunction } from "../../../src/functions/frame/run";
import { breakEvenGain } from "../../../src/functions/money";

describe("University of Wisconsin, in the farm press: bushels that pay for a fungicide pass", () => {
  it("$26 at $4.50 corn: 5.78 bu, printed as 5.8", () => {
    const [[gain] = []] = runFunction(breakEvenGain, [26, 4.5]);
    expect(gain).toBeCloseTo(26 / 4.5, 12);
    expect(Math.abs(Number(gain) - 5.8)).toBeLessThan(0.03);
  });
});
