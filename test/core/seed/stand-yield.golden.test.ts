import { standYield, type StandYieldInput } from "../../../src/core/seed/stand-yield";
import { faultOf } from "../fault-of";

/** Days since December 30, 1899 of a day in 2026; January 1, 2026 is 46,023. */
const firstOfMonth: Record<string, number> = { Apr: 46_113, May: 46_143, Jun: 46_174 };
const on = (words: string) => {
  const [month = "", day = ""] = words.split(" ");
  return (firstOfMonth[month] ?? Number.NaN) + Number(day) - 1;
};

const look = (over: Partial<StandYieldInput>) =>
  standYield({
    crop: "corn",
    plantedOn: on("Apr 28"),
    standPerAc: 30_000,
    guide: "iowa2001",
    uneven: { lossPct: 0 },
    hybrid: "full",
    rowWidthIn: null,
    ...over,
  });
const pct = (over: Partial<StandYieldInput>) => look(over).yieldPct;

/** As printed, first column the stand, then one column for each window. */
const iowa2001 = [
  [28_000, 100, 99, 90, 68, 52],
  [24_000, 94, 93, 85, 64, 49],
  [20_000, 81, 80, 73, 55, 42],
  [16_000, 74, 73, 67, 50, 38],
  [12_000, 68, 67, 61, 46, 35],
] as const;
const iowaGuide = [
  [45_000, 97, 93, 85, 68, 52],
  [40_000, 99, 95, 86, 69, 53],
  [35_000, 100, 96, 87, 70, 54],
  [30_000, 99, 95, 86, 69, 53],
  [25_000, 95, 91, 83, 67, 51],
  [20_000, 89, 85, 77, 63, 48],
  [15_000, 81, 78, 71, 58, 44],
  [10_000, 71, 68, 62, 50, 38],
] as const;
/** As printed, a row for each date; stands from 10,000 to 36,000 in steps of 2,000. */
const illinois: readonly (readonly [string, ...number[]])[] = [
  ["Apr 10", 62, 68, 73, 78, 82, 85, 88, 91, 92, 93, 94, 94, 93, 91],
  ["Apr 15", 65, 71, 76, 81, 85, 88, 91, 94, 95, 96, 97, 96, 96, 94],
  ["Apr 20", 67, 73, 78, 83, 87, 90, 93, 96, 97, 98, 99, 98, 98, 96],
  ["Apr 25", 68, 74, 79, 84, 88, 92, 94, 97, 98, 99, 100, 100, 99, 97],
  ["Apr 30", 68, 74, 79, 84, 88, 92, 95, 97, 99, 100, 100, 100, 99, 97],
  ["May 5", 67, 73, 79, 83, 87, 91, 94, 96, 98, 99, 99, 99, 98, 97],
  ["May 10", 65, 71, 77, 82, 86, 89, 92, 94, 96, 97, 97, 97, 96, 95],
  ["May 15", 63, 69, 74, 79, 83, 87, 89, 92, 93, 94, 95, 95, 94, 92],
  ["May 20", 59, 65, 71, 75, 80, 83, 86, 88, 90, 91, 91, 91, 90, 89],
  ["May 25", 55, 61, 66, 71, 75, 79, 81, 84, 85, 86, 87, 87, 86, 84],
  ["May 30", 49, 55, 61, 65, 70, 73, 76, 78, 80, 81, 81, 81, 80, 79],
  ["Jun 4", 43, 49, 54, 59, 63, 67, 70, 72, 74, 75, 75, 75, 74, 73],
  ["Jun 9", 36, 42, 47, 52, 56, 60, 62, 65, 66, 67, 68, 68, 67, 65],
];
/** Full season / shorter season. */
const wisconsin = [
  [36_000, "96/91", "99/95", "95/93", "85/87", "63/71", "40/55", "8/32"],
  [34_000, "97/92", "100/96", "96/94", "85/87", "63/72", "40/56", "8/32"],
  [32_000, "97/92", "100/96", "96/94", "86/87", "63/72", "40/56", "8/32"],
] as const;

describe("Iowa State University PM 1885", () => {
  const windows = [
    ["Apr 20", "May 5"],
    ["May 13", "May 19"],
    ["May 26", "Jun 1"],
    ["Jun 10", "Jun 16"],
    ["Jun 24", "Jun 28"],
  ] as const;
  it.each(iowa2001)("%i plants", (standPerAc, ...printed) => {
    windows.forEach((days, column) => {
      for (const day of days) expect(pct({ standPerAc, plantedOn: on(day) })).toBeCloseTo(printed[column] ?? -1, 10);
    });
  });
  it("is flat from 28,000 to 32,000 plants and above", () => {
    for (const standPerAc of [28_000, 31_000, 32_000, 40_000]) expect(pct({ standPerAc })).toBe(100);
  });
  it("24,000 planted April 28 against 30,000 planted May 28: 94 and 90, keep", () => {
    expect(pct({ standPerAc: 24_000 })).toBe(94);
    expect(pct({ plantedOn: on("May 28") })).toBe(90);
  });
  it("lies between windows and between stands: May 9 halves 100 and 99; 22,000 halves 81 and 94", () => {
    expect(pct({ plantedOn: on("May 9") })).toBeCloseTo(99.5, 10);
    expect(pct({ standPerAc: 22_000 })).toBeCloseTo(87.5, 10);
  });
});

describe("Iowa State University IPM 0001", () => {
  // Windows share their edge days; the earlier one has them.
  const lastDays = ["May 5", "May 15", "May 25", "Jun 5", "Jun 15"];
  it.each(iowaGuide)("%i plants", (standPerAc, ...printed) => {
    lastDays.forEach((day, column) => {
      expect(pct({ guide: "iowaGuide", standPerAc, plantedOn: on(day) })).toBeCloseTo(printed[column] ?? -1, 10);
    });
  });
  it("is a product of density and date within a point and a half", () => {
    const dates = [1, 0.96, 0.87, 0.7, 0.54];
    for (const [standPerAc, first] of iowaGuide) {
      lastDays.forEach((day, column) => {
        const product = first * (dates[column] ?? Number.NaN);
        expect(Math.abs(pct({ guide: "iowaGuide", standPerAc, plantedOn: on(day) }) - product)).toBeLessThan(1.5);
      });
    }
  });
});

describe("Nafziger 1994, as tabulated by Purdue University", () => {
  // A print of 2006 cuts two cells of April 15 to 7 and 8: they are 76 and 85.
  it.each(illinois.map(([day, ...printed]) => ({ day, printed })))("$day", ({ day, printed }) => {
    printed.forEach((percent, column) => {
      const standPerAc = 10_000 + 2000 * column;
      expect(pct({ guide: "illinois", standPerAc, plantedOn: on(day) })).toBeCloseTo(percent, 10);
    });
  });
  it("20,000 on April 25 and 30,000 on May 25: 92 and 87", () => {
    expect(pct({ guide: "illinois", standPerAc: 20_000, plantedOn: on("Apr 25") })).toBe(92);
    expect(pct({ guide: "illinois", standPerAc: 30_000, plantedOn: on("May 25") })).toBe(87);
  });
});

describe("University of Wisconsin 2003, zones of 95 to 115 days", () => {
  const days = ["Apr 20", "May 1", "May 10", "May 20", "Jun 1", "Jun 10", "Jun 20"];
  it.each(wisconsin)("%i plants", (standPerAc, ...printed) => {
    days.forEach((day, column) => {
      const [full, short] = (printed[column] ?? "").split("/").map(Number);
      const at = { guide: "wisconsin", standPerAc, plantedOn: on(day) } as const;
      expect(pct(at)).toBeCloseTo(full ?? -1, 10);
      expect(pct({ ...at, hybrid: "short" })).toBeCloseTo(short ?? -1, 10);
    });
  });
  it("the shorter hybrid is better from about May 20", () => {
    const better = (day: string) =>
      pct({ guide: "wisconsin", standPerAc: 34_000, plantedOn: on(day), hybrid: "short" }) >
      pct({ guide: "wisconsin", standPerAc: 34_000, plantedOn: on(day) });
    expect([better("May 10"), better("May 21")]).toEqual([false, true]);
  });
});

describe("soybean", () => {
  const soybean = { crop: "soybean", plantedOn: on("May 5") } as const;
  it("Illinois: 100 × (1 - 10^(-50/50)) = 90 for 50,000 and 99 for 100,000 plants, in good time", () => {
    expect(pct({ ...soybean, guide: "illinois", standPerAc: 50_000 })).toBeCloseTo(90, 3);
    expect(pct({ ...soybean, guide: "illinois", standPerAc: 100_000 })).toBeCloseTo(99, 3);
  });
  it("Penn State: full at 100,000 plants, 90 to 95 % at 70,000", () => {
    expect(pct({ ...soybean, guide: "pennState", standPerAc: 100_000 })).toBe(100);
    expect(pct({ ...soybean, guide: "pennState", standPerAc: 70_000 })).toBe(92.5);
  });
  it("late: 90 % on June 1, 76 % on June 15, and near Missouri's 84 % in the second week of June", () => {
    const late = (day: string) => pct({ ...soybean, guide: "pennState", standPerAc: 120_000, plantedOn: on(day) });
    expect([late("May 10"), late("Jun 1"), late("Jun 15"), late("Jun 30")]).toEqual([100, 90, 76, 56.5]);
    expect(late("Jun 8")).toBeGreaterThan(80);
    expect(late("Jun 8")).toBeLessThan(86);
  });
});

describe("wheat", () => {
  const perSquareFoot = (count: number) =>
    pct({ crop: "wheat", guide: "pennState", plantedOn: null, standPerAc: count * 43_560 });
  it.each([
    [12, 60],
    [14, 70],
    [15, 75],
    [18, 80],
    [21, 95],
    [22, 100],
    [28, 100],
    [35, 100],
    [40, 100],
  ])("Penn State, %i plants on a square foot: %i %%", (count, printed) => {
    expect(perSquareFoot(count)).toBeCloseTo(printed, 8);
  });
  it("Penn State prints 18 in two classes, 75 to 80 and 90 to 95: the lower one has it", () => {
    expect(perSquareFoot(18.01)).toBeGreaterThan(90);
  });
  it.each([
    [20, 100],
    [10, 95],
    [7, 90],
    [6, 85],
    [5, 80],
  ])("Ontario, %i plants on a foot of row: %i %%", (count, printed) => {
    const standPerAc = (count * 522_720) / 7.5;
    expect(pct({ crop: "wheat", guide: "ontario", plantedOn: null, standPerAc, rowWidthIn: 7.5 })).toBeCloseTo(
      printed,
      8,
    );
  });
  it("Ontario waits for the row width", () => {
    const at = { crop: "wheat", guide: "ontario", plantedOn: null, standPerAc: 700_000 } as const;
    expect(faultOf(() => look(at))).toEqual({ kind: "waiting", argument: "rowWidth" });
  });
});

describe("standYield at the edges of a table", () => {
  it("takes the first column before the first date, whatever the year", () => {
    expect(pct({ plantedOn: on("Apr 2") })).toBe(100);
    expect(pct({ plantedOn: on("May 28") + 365 })).toBe(90);
  });
  it("says where the table ends instead of going on", () => {
    expect(faultOf(() => look({ plantedOn: on("Jun 30") }))).toMatchObject({
      kind: "notPublished",
      what: "yield for plantingDate Jun 30",
      instead: "Its last day is Jun 28.",
    });
    expect(faultOf(() => look({ standPerAc: 9000 }))).toMatchObject({
      kind: "notPublished",
      instead: "Its thinnest is 12,000.",
    });
  });
  it("waits for the date", () => {
    expect(faultOf(() => look({ plantedOn: null }))).toEqual({ kind: "waiting", argument: "plantingDate" });
  });
  it("names the guides that know the crop", () => {
    expect(faultOf(() => look({ crop: "soybean" }))).toMatchObject({ instead: "Use: Illinois, Penn State." });
    expect(faultOf(() => look({ hybrid: "short" }))).toMatchObject({ kind: "notPublished" });
  });
  it("takes unevenness off: 94 less 5 % of it for gaps of 4 to 6 ft, corn only", () => {
    expect(pct({ standPerAc: 24_000, uneven: { key: "longGaps" } })).toBeCloseTo(89.3, 10);
    expect(pct({ standPerAc: 24_000, uneven: { lossPct: 10 } })).toBeCloseTo(84.6, 10);
    const soybean = { crop: "soybean", guide: "illinois", uneven: { key: "longGaps" }, standPerAc: 90_000 } as const;
    expect(faultOf(() => look(soybean))).toMatchObject({ kind: "notPublished" });
  });
  it("cites the rows it rests on, the ones from memory among them", () => {
    const marks = (standPerAc: number) => look({ guide: "iowaGuide", standPerAc }).cited.map(({ mark }) => mark);
    expect(marks(30_000)).toEqual(["V"]);
    expect(marks(22_000)).toEqual(["M", "V"]);
  });
});
