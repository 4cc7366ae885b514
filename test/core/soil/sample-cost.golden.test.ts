import { sampleCost } from "../../../src/core/soil/sample-cost";
import { faultOf } from "../fault-of";

const field = { acres: 80, acresPerSample: 2.5, costUsdPerSample: 10, collectingUsdPerAc: 6, years: 4 };

describe("the cost of sampling a field, by hand", () => {
  it("80 ac on a 2.5 ac grid: 32 samples, (320 + 480) / 80 / 4 = 2.50", () => {
    expect(sampleCost(field)).toEqual({
      costUsdPerAcYear: 2.5,
      samples: 32,
      samplesUsd: 320,
      collectingUsd: 480,
      roundUsd: 800,
      roundUsdPerAc: 10,
    });
  });
  it("the same field as one sample, collecting in the price: 20 / 80 / 2 = 0.125", () => {
    const whole = { ...field, acresPerSample: 80, costUsdPerSample: 20, collectingUsdPerAc: 0, years: 2 };
    expect(sampleCost(whole).costUsdPerAcYear).toBe(0.125);
  });
  it("the rest of a field takes a whole sample: 81 / 2.5 = 32.4, so 33", () => {
    expect(sampleCost({ ...field, acres: 81 }).samples).toBe(33);
  });
  it("a field smaller than its grid cell takes one", () => {
    expect(sampleCost({ ...field, acres: 2, acresPerSample: 10 }).samples).toBe(1);
  });
  it("230 ac by 2.3 ac is 100 samples, although the computer's quotient is a hair more", () => {
    expect(sampleCost({ ...field, acres: 230, acresPerSample: 2.3 }).samples).toBe(100);
  });
  it("refuses a field of no acres and a result that serves no year", () => {
    expect(faultOf(() => sampleCost({ ...field, acres: 0 }))).toMatchObject({ argument: "acres" });
    expect(faultOf(() => sampleCost({ ...field, years: 0 }))).toMatchObject({ argument: "years" });
  });
});
