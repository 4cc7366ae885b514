import type { SheetReading, ShownValue } from "../../../src/workbook/findings/reading/workbook-reading";
import {
  clientListPlan,
  clientPlan,
  readClientList,
  type ClientList,
} from "../../../src/workbook/starters/client-list";
import { allFunctions } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine";
import { oldSoilTests } from "../../../src/workbook/findings/old-soil-tests";
import { nothingTaken } from "../../../src/workbook/taken-names";
import { readingOfPlan } from "../findings/reading-of-plan";
import { show } from "./shown-sheet";

jest.setTimeout(60_000);

const sheet = (values: readonly (readonly ShownValue[])[], top = 0): SheetReading => ({
  name: "Book of fields",
  top,
  left: 0,
  formulas: values.map((row) => row.map((value) => value ?? "")),
  values,
  tables: [],
  messages: new Map(),
});

function listOf(values: readonly (readonly ShownValue[])[], top = 0): ClientList {
  const list = readClientList(sheet(values, top));
  if (!list) throw new Error("It was not taken for a list of clients.");
  return list;
}

const choices = {
  guide: "IN-MI-OH",
  preparedBy: "A. Adviser",
  preparedOn: 46_000,
  note: "Read it twice.",
  asGroup: false,
};

describe("a list of clients", () => {
  it("is known by the words at the head of its columns, wherever they stand", () => {
    const list = listOf([
      ["Fields of our growers", null, null, null],
      [],
      [
        "Grower",
        "Last crop",
        "Field name",
        "Planned crop",
        "Yield goal bu/ac",
        "Lime test index",
        "K (ppm)",
        "Remarks",
      ],
      ["A", "wheat", "North", "Soybeans", "58", 68, "1,21", "first"],
    ]);
    expect([...list.columns.heads]).toEqual([
      ["client", "Grower"],
      ["field", "Field name"],
      ["crop", "Planned crop"],
      ["yield", "Yield goal bu/ac"],
      ["bufferPh", "Lime test index"],
      ["potassium", "K (ppm)"],
      ["note", "Remarks"],
    ]);
    // A lime test index of 68 is a buffer pH of 6.8.
    expect(list.clients[0]?.fields[0]).toMatchObject({ crop: "soybean", yieldBuPerAc: 58, bufferPh: 6.8 });
    expect(list.clients[0]?.note).toBe("first");
    expect(list.clients[0]?.problems).toEqual(['Row 4: K (ppm) must be a number (ppm); got "1,21".']);
  });

  it.each([
    ["no client", ["Field", "Crop", "Acres"]],
    ["no crop", ["Client", "Field", "Last crop"]],
    ["a ledger of something else", ["Farm", "Date", "Amount"]],
  ])("is not seen where there is %s", (_what, head) => {
    expect(readClientList(sheet([head, ["A", "North", "corn"]]))).toBeUndefined();
  });

  it("gathers the rows of a client however its name is cased, and counts rows as the sheet does", () => {
    const list = listOf(
      [
        ["Client", "Field", "Crop", "Acres"],
        ["Mill Road", "North", "corn", 80],
        [null, null, null, null],
        ["MILL ROAD", "South", "corn", "eighty"],
        [null, "West", "corn", 40],
      ],
      4,
    );
    expect(list.clients.map(({ name, fields }) => [name, fields.map(({ row }) => row)])).toEqual([
      ["Mill Road", [6, 8]],
    ]);
    expect(list.clients[0]?.problems).toEqual(['Row 8: Acres must be a number (ac); got "eighty".']);
    expect(list.strayRows).toEqual(["Row 9 has the field West and no client."]);
  });

  it("says of every client what keeps it from being made", () => {
    const list = listOf([
      ["Client", "Field", "Crop", "Price $/bu", "pH"],
      ["A", "North", "barlei", null, null],
      ["B", "North", "alfalfa", null, null],
      ["C", "North", null, null, 65],
      ["D", "North", "corn", 4.35, null],
      ["D", "north", "corn", 4.1, null],
      ["E", null, "corn", null, null],
      ["F".repeat(61), "North", "corn", null, null],
    ]);
    expect(list.clients.map(({ problems }) => problems)).toEqual([
      ['Row 2: the crop "barlei" is not known here. Nearest: barley.'],
      ["Row 3: alfalfa is counted by the ton; a client budget counts in bushels."],
      ["Row 4: the crop is missing.", "Row 4: pH must be between 3.5 and 9.5; got 65. Did you mean 6.5?"],
      [
        "Row 6: the field north stands in row 5 already.",
        "Row 6: corn at $4.1, and at $4.35 in row 5. Give one price.",
      ],
      ["Row 7: the name of the field is missing."],
      ["The name has 61 letters; the sheets have room for 60."],
    ]);
  });

  it("takes the date of the sample as a day of the sheet, a day written out or a year, however the column is called", () => {
    const sampledOn = (head: string, value: ShownValue) => {
      const list = listOf([
        ["Client", "Field", "Crop", head],
        ["A", "North", "corn", value],
      ]);
      return list.clients[0]?.problems[0] ?? list.clients[0]?.fields[0]?.sampledOn;
    };
    // 45,000 is 15 March 2023.
    expect(sampledOn("Sampled", 45_000)).toBe(45_000);
    expect(sampledOn("Sample date", "2023-03-15")).toBe(45_000);
    expect(sampledOn("Date sampled", "3/15/2023")).toBe(45_000);
    expect(sampledOn("Soil test year", "2023")).toBe(2023);
    expect(sampledOn("Test date", "fall 2022")).toBe(2022);
    expect(sampledOn("Sampled on", null)).toBeNull();
    expect(sampledOn("Sampled", "last fall")).toBe(
      'Row 2: the date of the sample is given as a day, such as 2025-10-14, or as a year; got "last fall".',
    );
  });

  it("is read without a column for the date of the sample, which older lists do not have", () => {
    const list = listOf([
      ["Client", "Field", "Acres", "Crop", "Soil pH", "P ppm"],
      ["A", "North", 80, "corn", 6.2, 22],
    ]);
    expect(list.clients[0]).toMatchObject({ problems: [], fields: [{ sampledOn: null, soilPh: 6.2 }] });
  });

  it("leaves out a test in pounds, which a guide would read as twice the ppm", () => {
    const list = listOf([
      ["Client", "Field", "Crop", "P lb/ac"],
      ["A", "North", "corn", 60],
    ]);
    expect(list.columns.leftOut).toEqual([
      'The column "P lb/ac" is in pounds per acre; the guides are read in ppm. Halve the numbers and head the column ppm.',
    ]);
    expect(list.clients[0]?.fields[0]?.phosphorusPpm).toBeNull();
  });
});

describe("the budget of one client of a list", () => {
  const [client] = listOf([
    [
      "Client",
      "Field",
      "Crop",
      "Acres",
      "Yield",
      "Cost $/ac",
      "Price $/bu",
      "pH",
      "Buffer pH",
      "P ppm",
      "K ppm",
      "CEC",
      "Sampled",
    ],
    ["Mill side", "Mill Road", "soybean", 227, 57, 600, 10, 6.0, 6.6, 11, 88, 10, 2021],
    ["Mill side", "North Flat", "soybean", 203, null, null, 10, 7.3, null, 19, null, 22, 45_950],
  ]).clients;
  if (!client) throw new Error("no client");

  it("calculates what the list says, waits for what it does not, and shows no spreadsheet error", async () => {
    const book = await show(clientPlan(client, choices, nothingTaken));
    // 57 x $10 = $570; costs $600 + 57 x $0.12 hauling = $606.84; -$36.84 on 227 ac.
    expect(book.inTable("Fields today", "Mill Road", "Income $/ac")).toBe(570);
    expect(book.inTable("Fields today", "Mill Road", "All costs $/ac")).toBeCloseTo(606.84, 9);
    expect(book.inTable("Fields today", "North Flat", "Profit $/ac")).toBe("");
    const tested = (field: string, heading: string) => book.inTable("Soil tests", field, heading);
    // IN-MI-OH, buildup: P (20 - 11) x 5 + 57 x 0.8 = 90.6; K at CEC 10, critical level 120:
    // (120 - 88) x 1.5 + 57 x 1.15 + 20 = 133.55; both to the nearest 5.
    expect(tested("Mill Road", "P2O5 by guide lb/ac")).toBe(90);
    expect(tested("Mill Road", "K2O by guide lb/ac")).toBe(135);
    expect(tested("North Flat", "Effective lime ton/ac")).toBe(0);
    expect(tested("North Flat", "P2O5 by guide lb/ac")).toBe("waits for yield");
    // Without a yield North Flat has no break-even yet.
    expect(book.errors().filter((error) => !error.endsWith("#N/A"))).toEqual([]);
  });

  it("keeps the date of the sample, so that an old test is asked about", async () => {
    const plan = clientPlan(client, choices, nothingTaken);
    const reading = readingOfPlan(plan, await calculate(plan, allFunctions));
    // 45,950 is 20 October 2025; 46,451 is 5 March 2027.
    const old = oldSoilTests(reading, { year: 2027, serial: 46_451 });
    expect(old.map(({ at, row, year }) => [at.sheet, row, year])).toEqual([["Soil tests", "Mill Road", 2021]]);
  });

  it("carries name, date and note to the page that is handed over", async () => {
    const book = await show(clientPlan(client, choices, nothingTaken));
    const words = book.words("Client report");
    expect(words).toContain("Mill side, next season");
    // Day 46,000 is 2025-12-09.
    expect(words).toContain("Read it twice.");
    expect(book.beside("Client report", "Prepared by")).toBe("A. Adviser");
    expect(book.beside("Client report", "Date")).toBe("December 9, 2025");
    expect(words).toContain("● By the soil tests 1 of 2 fields call for lime, 1 for phosphate and 1 for potash.");
  });

  it("stands beside other clients under its own name", () => {
    const first = clientPlan(client, { ...choices, asGroup: true }, nothingTaken);
    const taken = {
      sheets: first.sheets.map(({ name }) => name),
      names: first.names.map(({ name }) => name),
      tables: first.sheets.flatMap(({ tables }) => tables.map(({ name }) => name)),
    };
    const second = clientPlan({ ...client, name: "Home side" }, { ...choices, asGroup: true }, taken);
    expect(first.sheets.map(({ name }) => name)).toContain("Mill side Client report");
    expect(second.sheets.map(({ name }) => name)).toContain("Home side Client report");
    expect(second.sheets.flatMap(({ tables }) => tables.map(({ name }) => name))).toContain("ClientFields2");
  });

  it("has no sheet of soil tests where none was taken", () => {
    const plan = clientPlan(
      { ...client, fields: client.fields.map((field) => ({ ...field, ...untested })) },
      choices,
      nothingTaken,
    );
    expect(plan.sheets.map(({ name }) => name)).not.toContain("Soil tests");
  });
});

const untested = { soilPh: null, bufferPh: null, phosphorusPpm: null, potassiumPpm: null };

it("reads its own starter sheet: three sides of the invented farm, nothing wrong with any", () => {
  const [made] = clientListPlan({ withDemo: true }, nothingTaken).sheets;
  if (!made) throw new Error("no sheet");
  const values: ShownValue[][] = [];
  for (const { row, column, content } of made.cells) {
    const cells = (values[row] ??= []);
    cells[column] = typeof content === "object" ? null : (content ?? null);
  }
  const list = listOf(Array.from(values, (row) => Array.from(row ?? [], (value) => value ?? null)));
  expect(list.columns.at.size).toBe(15);
  expect(list.clients.map(({ name, fields, problems }) => [name, fields.length, problems])).toEqual([
    ["Windmill Hollow, home side", 5, []],
    ["Windmill Hollow, mill side", 4, []],
    ["Windmill Hollow, bottoms", 1, []],
  ]);
});
