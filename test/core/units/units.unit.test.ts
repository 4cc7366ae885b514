import * as units from "../../../src/core/units/units";
import { wholeUp } from "../../../src/core/units/whole-up";

describe("conversion factors", () => {
  it("follow from the definitions, worked by hand", () => {
    expect(units.squareMeterPerAcre).toBeCloseTo(4046.856_422_4, 9); // 43,560 × 0.09290304
    expect(units.acrePerHectare).toBeCloseTo(2.471_053_815, 9); // 10,000 / 4046.8564224
    expect(units.literPerGallon).toBeCloseTo(3.785_411_784, 12); // 231 × 0.016387064
    expect(units.gramPerPound).toBeCloseTo(453.592_37, 9);
    expect(units.meterPerInch).toBeCloseTo(0.0254, 15); // 0.3048 / 12
    expect(units.cubicFootPerVolumeBushel).toBeCloseTo(1.244_456, 6); // 2150.42 / 1728
    expect(units.rowFootInchPerAcre).toBe(522_720); // 43,560 × 12
    expect(units.footPerMinuteAtOneMph).toBe(88); // 5280 / 60
    expect(units.secondPerHour).toBe(3600);
  });
  it("turn percent points into a share", () => {
    expect(units.pctToFraction(15.5)).toBeCloseTo(0.155, 15);
  });
});

describe("wholeUp", () => {
  it("rounds up to the next whole number", () => {
    expect(wholeUp(61.6)).toBe(62);
    expect(wholeUp(62)).toBe(62);
    expect(wholeUp(62.001)).toBe(63);
    expect(wholeUp(0)).toBe(0);
  });
  it("does not make a unit out of the dust of a division", () => {
    expect(wholeUp(0.1 + 0.2 - 0.3 + 2)).toBe(2);
    expect(wholeUp((1.1 * 3) / 3.3 + 1)).toBe(2); // 1.1 × 3 is 3.3000000000000003
  });
});
