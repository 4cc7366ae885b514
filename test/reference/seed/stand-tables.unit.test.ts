import { cornStandTables, type DateStandTable } from "../../../src/reference/seed/corn-stand-tables";
import { populationCurves } from "../../../src/reference/seed/population-curves";
import { rowsOfGuide, standGuides } from "../../../src/reference/seed/stand-guides";
import { ontarioWheat, pennStateSoybean, pennStateWheat, soybeanDates } from "../../../src/reference/seed/stand-steps";
import { unevenStands } from "../../../src/reference/seed/uneven-stand";
import { sources } from "../../../src/reference/sources";

/** Cells, and their sum added up outside this project from the printed tables. */
const frozen = {
  iowa2001: [5, 5, 1704],
  iowaGuide: [8, 5, 2976],
  illinois1994: [14, 13, 14885],
  wisconsinFull: [3, 7, 1465],
  wisconsinShort: [3, 7, 1582],
} as const;

describe.each(Object.entries<DateStandTable>(cornStandTables))("%s", (key, table) => {
  it("keeps its rows, columns and sum", () => {
    const cells = table.rows.flatMap(({ yieldPct }) => yieldPct);
    const sum = cells.reduce((total, cell) => total + cell, 0);
    expect([table.rows.length, table.columns.length, sum]).toEqual(frozen[key as keyof typeof frozen]); // keys of the tables
  });
  it("has a cell for every date, dates and stands running upward", () => {
    for (const { yieldPct } of table.rows) expect(yieldPct).toHaveLength(table.columns.length);
    const stands = table.rows.flatMap(({ standFrom, standTo }) => [standFrom, standTo]);
    expect([...stands].sort((a, b) => a - b)).toEqual(stands);
    const days = table.columns.flatMap(({ from, to }) => [from, to].map(([month, day]) => month * 100 + day));
    expect([...days].sort((a, b) => a - b)).toEqual(days);
  });
});

describe("stand guides", () => {
  it("are eight, every row with a source", () => {
    expect(standGuides).toHaveLength(8);
    for (const row of standGuides.flatMap(rowsOfGuide)) expect(sources).toHaveProperty([row.source]);
  });
  it("keep the three rows from memory of the Iowa field guide apart", () => {
    expect(cornStandTables.iowaGuide.rows.filter(({ mark }) => mark === "M").map(({ standTo }) => standTo)).toEqual([
      10_000, 15_000, 20_000,
    ]);
  });
  it("keep the rows and sums of the smaller tables", () => {
    const sumOf = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
    // 60 + 70 + 75 + 80 + 90 + 95 + 4 × 100; 80 + 85 + 90 + 95 + 100; 100 + 90 + 76 + 56.5; 2 + 5 + 7.5
    expect(sumOf(pennStateWheat.flatMap(({ pctFrom, pctTo }) => [pctFrom, pctTo]))).toBe(870);
    expect(sumOf(ontarioWheat.map(({ pctFrom }) => pctFrom))).toBe(450);
    expect(pennStateSoybean.map(({ pctFrom }) => pctFrom)).toEqual([92.5, 100]);
    expect(sumOf(soybeanDates.map(({ pct }) => pct))).toBe(322.5);
    expect(soybeanDates.every(({ mark, note }) => mark === "M" && note?.startsWith("Approximate"))).toBe(true);
    expect(sumOf(unevenStands.rows.map(({ lossPct }) => lossPct))).toBe(14.5);
  });
});

describe("population curves", () => {
  it("are frozen: two quadratic ones and an exponential one", () => {
    expect(populationCurves.rows.map(({ key, mark, fewest, most }) => [key, mark, fewest, most])).toEqual([
      ["cornIllinois", "V", 10, 36],
      ["cornIowa", "M", 10, 45],
      ["soybeanIllinois", "V", 40, 200],
    ]);
  });
  it("the soybean one is drawn so that 50,000 plants give nine tenths: its rise is ln 10 / 50", () => {
    expect(populationCurves.rows[2].rise).toBeCloseTo(Math.LN10 / 50, 7);
  });
});
