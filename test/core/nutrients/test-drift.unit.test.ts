import { testDrift, type TestDriftInput } from "../../../src/core/nutrients/test-drift";
import { testChange, testChangeRange } from "../../../src/reference/nutrients";
import { faultOf } from "../fault-of";

const potash: TestDriftInput = {
  soilTestPpm: 100,
  balanceLbPerAc: -60,
  nutrient: "K2O",
  lbPerPpm: null,
  cecMeq: 10,
};

describe("testDrift", () => {
  it("drops 100 ppm by 60 / 6 = 10", () => {
    expect(testDrift(potash).expectedPpm).toBeCloseTo(90, 9);
  });

  it("takes 8 lb K2O without a CEC: 60 / 8 = 7.5 ppm", () => {
    expect(testDrift({ ...potash, cecMeq: null }).expectedPpm).toBeCloseTo(92.5, 9);
  });

  it("takes 20 lb P2O5, with 16 and 30 beside it: 20 ppm + 120 lb", () => {
    const result = testDrift({ ...potash, nutrient: "P2O5", soilTestPpm: 20, balanceLbPerAc: 120 });
    expect(result.expectedPpm).toBeCloseTo(26, 9);
    expect(result.slowPpm).toBeCloseTo(24, 9);
    expect(result.fastPpm).toBeCloseTo(27.5, 9);
  });

  it("takes the number a person typed: 60 / 12 = 5 ppm", () => {
    const typed = testDrift({ ...potash, lbPerPpm: 12 });
    expect(typed.expectedPpm).toBeCloseTo(95, 9);
    // Published soils take 6 to 10 lb; a slower one of one's own is its own slow end.
    expect([typed.slowPpm, typed.fastPpm]).toEqual([95, 90]);
    expect(typed).toMatchObject({ changePpm: -5, system: "typed", cited: [testChangeRange.K2O] });
    expect(testDrift(potash).cited).toEqual([testChange.potashByCec, testChangeRange.K2O]);
    expect(testDrift({ ...potash, cecMeq: null }).cited).toEqual([testChange.potash, testChangeRange.K2O]);
  });

  it("stops at the floor of 40 ppm K and says so", () => {
    const result = testDrift({ ...potash, soilTestPpm: 50, balanceLbPerAc: -600 });
    expect(result.expectedPpm).toBe(40);
    expect(result.isAtFloor).toBe(true);
    // 60 lb at 6 lb a ppm take a test of 50 just to it.
    expect(testDrift({ ...potash, soilTestPpm: 50 })).toMatchObject({ expectedPpm: 40, isAtFloor: false });
  });

  it("does not lift a test that already lies under the floor", () => {
    expect(testDrift({ ...potash, soilTestPpm: 30, balanceLbPerAc: -60 }).expectedPpm).toBe(30);
    expect(testDrift({ ...potash, soilTestPpm: 30, balanceLbPerAc: 6 }).expectedPpm).toBeCloseTo(31, 9);
  });

  it("refuses nutrients that do not carry over", () => {
    expect(faultOf(() => testDrift({ ...potash, nutrient: "N" }))).toMatchObject({
      kind: "refused",
      argument: "nutrient",
    });
  });

  it("asks about a P test of 600: a report in lb/ac shows twice the ppm, as 60 lb/ac is 30 ppm", () => {
    const fault = faultOf(() => testDrift({ ...potash, nutrient: "P2O5", soilTestPpm: 600 }));
    expect(fault).toMatchObject({ kind: "outOfRange", suggestion: "300" });
  });
});
