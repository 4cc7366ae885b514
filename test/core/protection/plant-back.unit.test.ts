import { addMonths, dateText, serialOf } from "../../../src/core/units/sheet-date";
import { plantBack } from "../../../src/core/protection/plant-back";

const serial = (year: number, month: number, day: number) => serialOf(year, month, day) ?? Number.NaN;

describe("spreadsheet dates", () => {
  it("count as a sheet does: 1 January 2000 is 36,526, 1 January 2027 is 46,388", () => {
    expect(serial(2000, 1, 1)).toBe(36_526);
    expect(serial(2027, 1, 1)).toBe(46_388); // 36,526 + 27 × 365 + 7 leap days of 2000 to 2024
  });
  it("know no 30 February", () => {
    expect(serialOf(2027, 2, 30)).toBeUndefined();
  });
  it("add calendar months, to the last day of a short one", () => {
    expect(dateText(addMonths(serial(2027, 5, 15), 18))).toBe("2028-11-15");
    expect(dateText(addMonths(serial(2027, 8, 31), 6))).toBe("2028-02-29");
    expect(dateText(addMonths(serial(2027, 8, 31), 0))).toBe("2027-08-31");
  });
});

describe("plant-back", () => {
  it("18 months after 15 May 2027 is 15 November 2028: 1 October 2028 is 45 days short", () => {
    const result = plantBack({
      appliedDate: serial(2027, 5, 15),
      interval: { months: 18 },
      plantDate: serial(2028, 10, 1),
    });
    expect(result.daysShort).toBe(45); // 30 days to 31 October, 15 more
  });
  it("is 0 on the first day that the interval allows, and negative after it", () => {
    const after = (days: number) =>
      plantBack({ appliedDate: 46_500, interval: { days: 120 }, plantDate: 46_500 + days }).daysShort;
    expect([after(119), after(120), after(130)]).toEqual([1, 0, -10]);
  });
  it("counts whole days, whatever the time of day", () => {
    expect(plantBack({ appliedDate: 46_500.9, interval: { days: 10 }, plantDate: 46_510.1 }).daysShort).toBe(0);
  });
});
