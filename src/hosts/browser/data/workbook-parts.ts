import {
  LocaleType,
  ObjectMatrix,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IResources,
  type IWorkbookData,
} from "@univerjs/core";
import type { WorkbookPlan } from "../../../workbook/plan";
import { namesPlugin } from "../../engine/name-and-table-resources";
import { workbookData, type SheetRoom } from "../../engine/workbook-data";
import { isRecord } from "../../is-record";
import type { FillReceipt } from "../../port";
import { withSheets } from "../charts/chart-moves";
import { notesResource } from "./note-resource";
import { holdsMemory, memoryOf, withMemory, type PageMemory, type SheetMemory } from "./page-memory";
import { rulesResource } from "./rule-resource";
import { validationsResource } from "./validation-resource";
import { hostWords } from "../../words";

const workbookId = "loamsheet";
const room: SheetRoom = { rows: 40, columns: 6, atLeastRows: 80, atLeastColumns: 20 };
const pristineSheet = "Sheet1";

/** A workbook of one empty sheet. */
export function emptyWorkbook(): IWorkbookData {
  return {
    id: workbookId,
    name: "Workbook",
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: ["sheet-0"],
    sheets: { "sheet-0": { id: "sheet-0", name: pristineSheet, rowCount: 200, columnCount: 26 } },
    resources: [],
  };
}

/** Whether kept data is a whole workbook: a damaged one would stop the page, or lose in silence what is damaged. */
export function isWorkbook(data: unknown): data is IWorkbookData {
  if (!isRecord(data)) return false;
  const { sheetOrder, sheets, resources, custom } = data;
  if (!Array.isArray(sheetOrder) || sheetOrder.length === 0 || !isRecord(sheets)) return false;
  const known = new Map(Object.entries(sheets));
  const areWhole = sheetOrder.every((id: unknown) => isSheet(known.get(String(id))));
  return areWhole && [resources ?? []].flat().every(isResource) && holdsMemory(custom ?? {});
}

function isSheet(sheet: unknown): boolean {
  if (!isRecord(sheet) || typeof sheet.name !== "string") return false;
  const { cellData = {} } = sheet;
  return isRecord(cellData) && Object.values(cellData).every((row) => typeof row === "object" && row !== null);
}

function isResource(resource: unknown): boolean {
  if (!isRecord(resource) || typeof resource.name !== "string") return false;
  try {
    parsed({ name: resource.name, data: String(resource.data ?? "") });
    return true;
  } catch {
    return false;
  }
}

/** What a workbook is called in a list; one that is damaged has lost its title. */
export function titleOf(data: unknown): string {
  return (isWorkbook(data) && memoryOf(data).title) || hostWords.files.untitled;
}

/** Whether nobody has put anything into this workbook. */
export function isPristine({ sheetOrder, sheets }: IWorkbookData): boolean {
  const only = sheetOrder.length === 1 ? sheets[sheetOrder[0] ?? ""] : undefined;
  return only !== undefined && only.name === pristineSheet && !holdsAnything(only.cellData ?? {});
}

function holdsAnything(cells: IObjectMatrixPrimitiveType<ICellData>): boolean {
  let found = false;
  new ObjectMatrix(cells).forValue((_row, _column, cell) => {
    found ||= holdsContent(cell);
    return !found;
  });
  return found;
}

/** All that a person can have put into a workbook, as one text; what formulas give is left out. */
export function contentsOf({ sheetOrder, sheets, custom }: IWorkbookData): string {
  const cellsOf = (id: string) => {
    const typed: unknown[] = [];
    new ObjectMatrix(sheets[id]?.cellData ?? {}).forValue((row, column, cell) => {
      if (cell) typed.push([row, column, cell.s, cell.p, cell.f ?? cell.si ?? cell.v]);
    });
    return typed;
  };
  return JSON.stringify([custom, sheetOrder.map((id) => [id, sheets[id]?.name, cellsOf(id)])]);
}

function holdsContent(cell: ICellData | null): boolean {
  return Boolean(cell?.f || cell?.p || (cell?.v ?? "") !== "");
}

/** The workbook with the sheets of a plan added behind its own; the empty sheet of a new page makes way. */
export function withPlan(workbook: IWorkbookData, plan: WorkbookPlan, locked: boolean): IWorkbookData {
  const before = isPristine(workbook) ? { ...emptyWorkbook(), sheetOrder: [], sheets: {} } : workbook;
  const ids = newSheetIds(workbook, plan.sheets.length);
  const added = workbookData(plan, { workbook: workbookId, sheets: ids }, room);
  const resources = [
    ...(added.resources ?? []),
    rulesResource(plan.sheets, ids),
    validationsResource(plan.sheets, ids),
    notesResource(plan.sheets, ids),
  ];
  const together: IWorkbookData = {
    ...before,
    id: workbookId,
    name: plan.title,
    styles: { ...before.styles, ...added.styles },
    sheetOrder: [...before.sheetOrder, ...added.sheetOrder],
    sheets: { ...before.sheets, ...added.sheets },
    resources: mergedResources(before.resources ?? [], resources),
  };
  return withMemory(together, memoryWithPlan(memoryOf(before), plan, ids, locked));
}

function memoryWithPlan(memory: PageMemory, plan: WorkbookPlan, ids: readonly string[], locked: boolean): PageMemory {
  const idOf = (name: string) => ids[plan.sheets.findIndex((sheet) => sheet.name === name)] ?? name;
  const entries = plan.sheets.map((sheet, index): [string, SheetMemory] => [
    ids[index] ?? "",
    { charts: sheet.charts.map((chart) => withSheets(chart, idOf)), print: sheet.print, locked },
  ]);
  return {
    starter: memory.starter || plan.starter,
    title: memory.title || plan.title,
    sheets: { ...memory.sheets, ...Object.fromEntries(entries) },
  };
}

/** The workbook without the sheets and names of a fill, as far as they are still there. */
export function withoutFill(workbook: IWorkbookData, receipt: FillReceipt): IWorkbookData {
  const gone = new Set(workbook.sheetOrder.filter((id) => receipt.sheets.includes(workbook.sheets[id]?.name ?? "")));
  const sheetOrder = workbook.sheetOrder.filter((id) => !gone.has(id));
  if (sheetOrder.length === 0) return emptyWorkbook();
  const memory = memoryOf(workbook);
  const left: IWorkbookData = {
    ...workbook,
    sheetOrder,
    sheets: without(workbook.sheets, gone),
    resources: (workbook.resources ?? []).map((resource) => resourceWithout(resource, gone, receipt.names)),
  };
  return withMemory(left, { ...memory, sheets: without(memory.sheets, gone) });
}

function resourceWithout(resource: IResources[number], gone: ReadonlySet<string>, names: readonly string[]) {
  const data = parsed(resource);
  if (data === undefined) return resource;
  if (resource.name !== namesPlugin) return { ...resource, data: JSON.stringify(without(data, gone)) };
  const kept = Object.entries(data).filter(([, entry]) => !names.includes(nameIn(entry)));
  return { ...resource, data: JSON.stringify(Object.fromEntries(kept)) };
}

function nameIn(entry: unknown): string {
  return isRecord(entry) && "name" in entry ? String(entry.name) : "";
}

/** Resources hold one object each, by sheet id or name id: those of the plan stand beside those already there. */
function mergedResources(before: IResources, added: IResources): IResources {
  const all = new Map(before.map((resource) => [resource.name, resource]));
  for (const resource of added) {
    const present = all.get(resource.name);
    const data = { ...(present && parsed(present)), ...parsed(resource) };
    all.set(resource.name, { ...resource, data: JSON.stringify(data) });
  }
  return [...all.values()];
}

/** What a resource holds by key; nothing where it keeps something else. */
export function parsed({ data }: IResources[number]): Readonly<Record<string, unknown>> | undefined {
  if (!data) return undefined;
  const value: unknown = JSON.parse(data);
  return isRecord(value) ? value : undefined;
}

function newSheetIds({ sheets }: IWorkbookData, count: number): string[] {
  const ids: string[] = [];
  for (let number = 0; ids.length < count; number++) {
    const id = `sheet-${number}`;
    if (!(id in sheets)) ids.push(id);
  }
  return ids;
}

function without<Value>(entries: Readonly<Record<string, Value>>, gone: ReadonlySet<string>): Record<string, Value> {
  return Object.fromEntries(Object.entries(entries).filter(([key]) => !gone.has(key)));
}
