import { addMonths, calendarOf, dateText, serialOf } from "../../../src/core/units/sheet-date";

// As spreadsheets count: 1 is 1 January 1900 with a 29 February that never was, so 1 January 1970 is 25,569.
const newYear2024 = 45_292;

it("reads a serial as a calendar date, whatever the time of day", () => {
  expect(calendarOf(25_569)).toEqual({ year: 1970, month: 1, day: 1 });
  expect(calendarOf(newYear2024)).toEqual({ year: 2024, month: 1, day: 1 });
  // 31 + 29 days on, at six in the evening.
  expect(calendarOf(newYear2024 + 60.75)).toEqual({ year: 2024, month: 3, day: 1 });
  expect(dateText(newYear2024 + 59)).toBe("2024-02-29");
});

it("finds the serial of a date, and none for a day that is not", () => {
  expect(serialOf(1970, 1, 1)).toBe(25_569);
  expect(serialOf(2024, 2, 29)).toBe(newYear2024 + 59);
  for (const [year, month, day] of [
    [2023, 2, 29],
    [2024, 4, 31],
    [2024, 13, 1],
    [2024, 0, 1],
    [2024, 1, 0],
  ] as const) {
    expect(serialOf(year, month, day)).toBeUndefined();
  }
});

it("adds calendar months, to the last day where the month is shorter", () => {
  const january31 = newYear2024 + 30;
  expect(dateText(addMonths(january31, 1))).toBe("2024-02-29");
  expect(dateText(addMonths(january31, 3))).toBe("2024-04-30");
  expect(dateText(addMonths(january31, 13))).toBe("2025-02-28");
  expect(dateText(addMonths(january31, -2))).toBe("2023-11-30");
  expect(dateText(addMonths(newYear2024, 12))).toBe("2025-01-01");
});
