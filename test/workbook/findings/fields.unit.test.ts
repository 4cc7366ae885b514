import { missingBuffers } from "../../../src/workbook/findings/missing-buffer";
import { oldSoilTests } from "../../../src/workbook/findings/old-soil-tests";
import { implausibleFigures } from "../../../src/workbook/findings/implausible-figures";
import { sheetOf, workbookOf, type GivenCell } from "./reading-of";

describe("a missing buffer pH", () => {
  const tests = (...rows: GivenCell[][]) => sheetOf("Soil tests", [["Field", "Soil pH", "Buffer pH"], ...rows]);
  const assumptions = (method: string) =>
    sheetOf("Assumptions", [
      ["Target", 6.5],
      ["Lime below", 0.3],
      ["Table", method],
    ]);
  const names: Record<string, [string, number, number]> = {
    target_ph: ["Assumptions", 0, 1],
    lime_trigger: ["Assumptions", 1, 1],
    lime_method: ["Assumptions", 2, 1],
  };
  const found = (sheet = tests(), method = "IN-MI-OH") =>
    missingBuffers(workbookOf([sheet, assumptions(method)], names));

  it("is asked for where the soil is due for lime", () => {
    expect(found(tests(["Mill Road", 5.8, null], ["Creek Bend", 5.8, 6.4]))).toEqual([
      {
        kind: "missingBuffer",
        at: { sheet: "Soil tests", row: 1, column: 2 },
        row: "Mill Road",
        ph: 5.8,
        targetPh: 6.5,
      },
    ]);
  });
  it("is not asked for closer to the target than the farm limes, nor above it, nor without a pH", () => {
    expect(found(tests(["Near", 6.3, null], ["Above", 6.9, null], ["Untested", null, null]))).toEqual([]);
  });
  it("is asked for right at the distance from which the farm limes", () => {
    expect(found(tests(["At it", 6.2, null]))).toHaveLength(1);
  });
  it("is not asked for where the lime table reads exchangeable acidity instead", () => {
    expect(found(tests(["Mill Road", 5.8, null]), "PA")).toEqual([]);
  });
  it("is asked for in a foreign list that says its own target, and not where no target can be found", () => {
    const heads = ["Tract", "pH", "Lime index", "Target pH"];
    expect(missingBuffers(workbookOf([sheetOf("Tests", [heads, ["T1", 5.5, null, 6.8]])]))).toMatchObject([
      { row: "T1", targetPh: 6.8 },
    ]);
    expect(missingBuffers(workbookOf([sheetOf("Tests", [heads.slice(0, 3), ["T1", 5.5, null]])]))).toEqual([]);
  });
  it("is not asked for in columns that only repeat the tests", () => {
    const plan = sheetOf("Lime plan", [
      ["Field", "Soil pH", "Buffer pH"],
      [
        { f: "=A1", v: "Mill Road" },
        { f: "=B1", v: 5.8 },
        { f: "=C1", v: "" },
      ],
    ]);
    expect(found(plan)).toEqual([]);
  });
});

describe("an old soil test", () => {
  // 5 March 2027: day 46,023 is 1 January 2026; 365 + 31 + 28 + 4 days later.
  const today = { year: 2027, serial: 46_451 };
  const found = (...rows: GivenCell[][]) =>
    oldSoilTests(workbookOf([sheetOf("Tests", [["Field", "Sampled", "Soil pH"], ...rows])]), today);

  it("is one of more than four years, by year, by day or by words with a year", () => {
    // 44 000 is 18 June 2020.
    expect(found(["By year", 2022, 6.5], ["By day", 44_000, 6.5], ["By words", "fall 2019", 6.5])).toEqual([
      { kind: "oldSoilTest", at: { sheet: "Tests", row: 1, column: 1 }, row: "By year", year: 2022 },
      { kind: "oldSoilTest", at: { sheet: "Tests", row: 2, column: 1 }, row: "By day", year: 2020 },
      { kind: "oldSoilTest", at: { sheet: "Tests", row: 3, column: 1 }, row: "By words", year: 2019 },
    ]);
  });
  it("is told by a day written out to the day, and by its year where there is no such day", () => {
    // 5 March 2027 less four years is 5 March 2023.
    const rows = [
      ["Day before", "3/4/2023", 6.5],
      ["Day after", "2023-03-06", 6.5],
      ["No such day", "2/30/2021", 6.5],
    ];
    expect(found(...rows).map(({ row, year }) => [row, year])).toEqual([
      ["Day before", 2023],
      ["No such day", 2021],
    ]);
  });
  it("is not one of four years or less, one without a date, or a row without a test", () => {
    // 45 000 is 15 March 2023: ten days short of four years.
    expect(
      found(["Four", 2023, 6.5], ["Days short", 45_000, 6.4], ["No date", null, 6], ["No test", 2010, null]),
    ).toEqual([]);
  });
  it("is looked for only where the list holds soil tests", () => {
    const other = sheetOf("Machines", [
      ["Machine", "Year", "Price"],
      ["Planter", 2009, 40_000],
    ]);
    expect(oldSoilTests(workbookOf([other]), today)).toEqual([]);
  });
});

describe("an implausible figure", () => {
  const found = (rows: GivenCell[][]) => implausibleFigures(workbookOf([sheetOf("Plan", rows)]));

  it("is a price in cents or a yield no field has had, by the crop of its row", () => {
    expect(
      found([
        ["Crop", "Price $/bu", "Usual yield bu/ac"],
        ["corn", 450, 185],
        ["soybean", 10.8, 580],
      ]),
    ).toEqual([
      {
        ...{ kind: "implausibleFigure", at: { sheet: "Plan", row: 1, column: 1 }, what: "price", head: "Price $/bu" },
        ...{ crop: "corn", value: 450, min: 0.5, max: 60, unit: "$/bu" },
      },
      {
        ...{ kind: "implausibleFigure", at: { sheet: "Plan", row: 2, column: 2 }, what: "yield" },
        ...{ head: "Usual yield bu/ac", crop: "soybean", value: 580, min: 1, max: 250, unit: "bu/ac" },
      },
    ]);
  });
  it("is found beside a label too, with the crop at the head of the column", () => {
    expect(
      found([
        ["An acre of", "", "corn", "wheat"],
        ["Yield goal", "bu/ac", 200, 780],
      ]),
    ).toMatchObject([{ at: { row: 1, column: 3 }, crop: "wheat", max: 300 }]);
  });
  it("is not an ordinary price or yield, a blank season, a step between prices or a price by another unit", () => {
    expect(
      found([
        ["Crop", "Price $/bu", "Yield bu/ac", "Price step $/bu", "Price $/ton"],
        ["corn", 4.5, 210, 0.1, 450],
        ["soybean", 11, 0, 0.25, 610],
      ]),
    ).toEqual([]);
  });
  it("is not a yield counted in tons, and not what a formula gives", () => {
    expect(
      found([
        ["Crop", "Yield bu/ac"],
        ["corn silage", 0.5],
        ["corn", { f: "=B2*2000", v: 2000 }],
      ]),
    ).toEqual([]);
  });
});
