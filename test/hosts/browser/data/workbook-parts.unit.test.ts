import { InsertRowMutation } from "@univerjs/sheets";
import { memoryAfter } from "../../../../src/hosts/browser/charts/chart-moves";
import { memoryOf } from "../../../../src/hosts/browser/data/page-memory";
import { notesOf, rulesOf, tablesOf, validationsOf } from "../../../../src/hosts/browser/data/plan-from-resources";
import {
  emptyWorkbook,
  isPristine,
  isWorkbook,
  parsed,
  withoutFill,
  withPlan,
} from "../../../../src/hosts/browser/data/workbook-parts";
import { samplePlan } from "../../sample-plan";
import { cell, plan, sheet } from "../../plan-parts";

const own = () => withPlan(emptyWorkbook(), plan([sheet("Mine", [cell(0, 0, "kept")])]), false);
const receipt = { starter: "trial", sheets: ["Fields", "Price list"], names: ["corn_price"] };

function withBrokenChart() {
  const workbook = withPlan(emptyWorkbook(), samplePlan(), false);
  const memory = memoryOf(workbook);
  const broken = Object.entries(memory.sheets).map(([id, sheet]) => [id, { ...sheet, charts: [{ kind: "bar" }] }]);
  return { ...workbook, custom: { loamsheet: { ...memory, sheets: Object.fromEntries(broken) } } };
}

function resourcesOf(workbook: ReturnType<typeof emptyWorkbook>) {
  return new Map((workbook.resources ?? []).map((resource) => [resource.name, parsed(resource) ?? {}]));
}

describe("withPlan", () => {
  it("replaces the empty sheet of a new page", () => {
    const { sheetOrder, sheets } = withPlan(emptyWorkbook(), samplePlan(), false);
    expect(sheetOrder.map((id) => sheets[id]?.name)).toEqual(["Fields", "Price list"]);
  });

  it("adds its sheets behind those of the person, whose cells stay as they are", () => {
    const before = own();
    const { sheetOrder, sheets } = withPlan(before, samplePlan(), false);
    expect(sheetOrder.map((id) => sheets[id]?.name)).toEqual(["Mine", "Fields", "Price list"]);
    const mine = before.sheetOrder[0] ?? "";
    expect(sheets[mine]).toBe(before.sheets[mine]);
  });

  it("gives back tables, entry rules, conditional formats and notes as they were planned", () => {
    const workbook = withPlan(own(), samplePlan(), false);
    const [fields] = samplePlan().sheets;
    const resources = resourcesOf(workbook);
    const id = workbook.sheetOrder[1] ?? "";
    expect(tablesOf(resources, id)).toEqual(fields?.tables);
    expect(validationsOf(resources, id)).toEqual(fields?.validations);
    expect(rulesOf(resources, id)).toEqual(fields?.rules);
    expect(notesOf(resources, id)).toEqual(fields?.notes);
  });
});

describe("withoutFill", () => {
  it("takes away what a fill added and leaves the rest", () => {
    const left = withoutFill(withPlan(own(), samplePlan(), false), receipt);
    expect(left.sheetOrder.map((id) => left.sheets[id]?.name)).toEqual(["Mine"]);
    for (const [name, entries] of resourcesOf(left)) expect([name, entries]).toEqual([name, {}]);
    expect(Object.keys(memoryOf(left).sheets)).toEqual(left.sheetOrder);
  });

  it("leaves an empty workbook when nothing else was there", () => {
    expect(isPristine(withoutFill(withPlan(emptyWorkbook(), samplePlan(), false), receipt))).toBe(true);
  });

  it("leaves a sheet that was renamed since: it is the person's now", () => {
    const workbook = withPlan(emptyWorkbook(), samplePlan(), false);
    const [first = ""] = workbook.sheetOrder;
    const renamed = {
      ...workbook,
      sheets: { ...workbook.sheets, [first]: { ...workbook.sheets[first], name: "My fields" } },
    };
    expect(withoutFill(renamed, receipt).sheetOrder).toEqual([first]);
  });
});

describe("isWorkbook", () => {
  it("knows a workbook of its own", () => expect(isWorkbook(own())).toBe(true));
  it("knows one with everything a plan can hold, and a new one", () => {
    expect(isWorkbook(withPlan(own(), samplePlan(), true))).toBe(true);
    expect(isWorkbook(emptyWorkbook())).toBe(true);
  });
  it.each([
    ["nothing", undefined],
    ["text", "workbook"],
    ["no order of sheets", { sheets: {} }],
    ["no sheets", { ...own(), sheets: null }],
    ["an order that is not a list", { ...own(), sheetOrder: "sheet-0" }],
    ["an empty order", { ...own(), sheetOrder: [] }],
    ["a sheet that is not there", { ...own(), sheetOrder: ["sheet-9"] }],
    ["a sheet without a name", { ...own(), sheets: { "sheet-0": {} }, sheetOrder: ["sheet-0"] }],
    [
      "cells that are text",
      { ...own(), sheets: { "sheet-0": { name: "A", cellData: "{}" } }, sheetOrder: ["sheet-0"] },
    ],
    [
      "a row that is text",
      { ...own(), sheets: { "sheet-0": { name: "A", cellData: { 0: "x" } } }, sheetOrder: ["sheet-0"] },
    ],
    ["tables that break off", { ...own(), resources: [{ name: "SHEET_TABLE_PLUGIN", data: '{"a":' }] }],
    ["a memory that is a number", { ...own(), custom: { loamsheet: 7 } }],
    ["a chart without a place", withBrokenChart()],
  ])("refuses %s", (_what, data) => expect(isWorkbook(data)).toBe(false));
});

describe("isPristine", () => {
  it("holds for a new workbook and not once a cell is filled", () => {
    expect(isPristine(emptyWorkbook())).toBe(true);
    const typed = emptyWorkbook();
    const [only = ""] = typed.sheetOrder;
    const filled = { ...typed, sheets: { [only]: { ...typed.sheets[only], cellData: { 3: { 2: { v: 0 } } } } } };
    expect(isPristine(filled)).toBe(false);
    const emptied = { ...typed, sheets: { [only]: { ...typed.sheets[only], cellData: { 3: { 2: { v: "" } } } } } };
    expect(isPristine(emptied)).toBe(true);
  });
});

describe("memoryAfter", () => {
  const workbook = withPlan(emptyWorkbook(), samplePlan(), false);
  const [fields = "", prices = ""] = workbook.sheetOrder;
  const insertedAt = (subUnitId: string, row: number) => ({
    id: InsertRowMutation.id,
    params: {
      unitId: workbook.id,
      subUnitId,
      range: { startRow: row, endRow: row, startColumn: 0, endColumn: 19 },
    },
  });

  it("moves a chart and grows its ranges with a row put in", () => {
    const [chart] = memoryAfter(memoryOf(workbook), insertedAt(fields, 4)).sheets[fields]?.charts ?? [];
    expect(chart?.at).toMatchObject({ top: 9, bottom: 23 });
    expect(chart?.categories.area).toMatchObject({ top: 3, bottom: 6 });
    expect(chart?.series[0]?.values.area).toMatchObject({ top: 3, bottom: 6 });
  });

  it("leaves everything alone when another sheet changes", () => {
    const memory = memoryOf(workbook);
    expect(memoryAfter(memory, insertedAt(prices, 0))).toBe(memory);
  });
});
