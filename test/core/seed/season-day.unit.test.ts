import { dayInWords, seasonDay, seasonDayOf } from "../../../src/core/seed/season-day";

describe("season days", () => {
  it("count from January 1 and know no February 29", () => {
    expect([seasonDay(1, 1), seasonDay(3, 1), seasonDay(12, 31)]).toEqual([1, 60, 365]);
  });
  it("of spreadsheet dates are the same in every year: 45,410 is April 28, 2024; 46,140 April 28, 2026", () => {
    expect([seasonDayOf(45_410), seasonDayOf(46_140), seasonDayOf(46_140.75)]).toEqual([118, 118, 118]);
  });
  it("read as a month and a day, at both ends of a month", () => {
    expect([seasonDay(4, 30), seasonDay(5, 1), seasonDay(12, 31), 1].map(dayInWords)).toEqual([
      "Apr 30",
      "May 1",
      "Dec 31",
      "Jan 1",
    ]);
  });
});
