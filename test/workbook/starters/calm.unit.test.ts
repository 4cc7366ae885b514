import { cropChoice, starters } from "../../../src/workbook/starters";
import { isMeantForChart } from "../../../src/build/samples/problems";
import { emptied, planOf, show, typed } from "./shown-sheet";

const keys = starters.map(({ key }) => key);

describe("rows that are not filled in yet", () => {
  it.each(keys)("show neither errors nor figures in an empty %s", async (key) => {
    const book = await show(planOf(key, { withDemo: false, numberOfFields: 3 }));
    expect(book.errors()).toEqual([]);
    // Crops and materials start with examples, and the shopping list has a line for each material.
    const withExamples = ["Assumptions", "Materials", "Shopping list"];
    const byField = book.plan.sheets.filter(({ name }) => !withExamples.includes(name));
    for (const { name, tables, cells } of byField) {
      // One row a crop, and crops are there from the start.
      for (const { area } of tables.filter((table) => table.name !== "BestStands")) {
        const computed = cells.filter(
          (cell) =>
            cell.row > area.top &&
            cell.row <= area.bottom &&
            cell.column <= area.right &&
            cell.style.startsWith("computed") &&
            !isMeantForChart(cell),
        );
        for (const { row, column } of computed)
          expect([name, row, column, book.at(name, row, column) ?? ""]).toEqual([name, row, column, ""]);
      }
    }
  });

  it("wait by name in the cells of our functions, stay blank beside them, and leave the totals standing", async () => {
    const plan = emptied(planOf("farm-plan", { numberOfFields: 2 }), [
      ["Fields", "Home Quarter", "Last yield bu/ac"],
      ["Soil tests", "Home Quarter", "K ppm"],
      ["Soil tests", "Home Quarter", "Buffer pH"],
      ["Fields", "Creek Bend", "Next crop"],
    ]);
    const book = await show(plan);
    const ledger = (field: string, heading: string) => book.inTable("Potash ledger", field, heading);
    expect(ledger("Home Quarter", "Last crop took lb/ac")).toMatchObject({
      code: "#N/A",
      message: "waiting for yield",
    });
    expect(ledger("Home Quarter", "Left after it lb/ac")).toBe("");
    expect(ledger("Home Quarter", "A year lb/ac")).toBe("");
    expect(ledger("Home Quarter", "What it means")).toBe("● waits for crops, yields and rates");
    expect(book.inTable("Fertility plan", "Home Quarter", "K2O by guide lb/ac")).toBe("waits for test");
    expect(book.inTable("Product plan", "Home Quarter", "Cost $")).toBe("");
    expect(book.inTable("Lime plan", "Home Quarter", "What to do")).toBe("Waits for the soil test");
    expect(book.inTable("Fertility plan", "Creek Bend", "P2O5 by guide lb/ac")).toBe("waits for crop");
    expect(book.inTable("Seed plan", "Creek Bend", "Cost $")).toBe("");
    expect(book.beside("Seed plan", "Whole farm", 9)).toBeGreaterThan(0);
    const outside = book.errors().filter((error) => !/^(Potash ledger|Phosphate ledger)!/.test(error));
    expect(outside).toEqual([]);
    expect(book.words("Summary").some((words) => words.startsWith("● Potash: waits"))).toBe(true);
  });

  it("tell a 0 that was typed from a cell left blank", async () => {
    const book = await show(typed(planOf("farm-plan"), [[["Fields", "Mill Road", "K2O put on lb/ac"], 0]]));
    expect(book.errors()).toEqual([]);
    // nothing on, 36.4 and 65.55 off
    expect(book.inTable("Potash ledger", "Mill Road", "Balance of both lb/ac")).toBeCloseTo(-101.95, 6);
  });

  it("do not slow or break a plan of 60 fields", async () => {
    const book = await show(planOf("farm-plan", { numberOfFields: 60 }));
    expect(book.errors()).toEqual([]);
    expect(book.beside("Fertility plan", "Whole farm", 1)).toBe(1480);
  }, 30_000);

  it.each(keys)("let %s be made for one field and for one crop alone", async (key) => {
    const one = await show(planOf(key, { numberOfFields: 1 }));
    expect(one.errors()).toEqual([]);
    const wheat = await show(planOf(key, { crops: [cropChoice("wheat")] }));
    expect(wheat.errors()).toEqual([]);
  });
});
