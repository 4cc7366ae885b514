import type { IWorkbookData } from "@univerjs/core";
import type { ChartPlan, PrintPlan } from "../../../workbook/plan";
import { isRecord } from "../../is-record";

/** What a plan says about a sheet and the grid has no place for. */
export interface SheetMemory {
  /** Their ranges name sheets by id, so that a renamed sheet keeps its charts. */
  readonly charts: readonly ChartPlan[];
  readonly print: PrintPlan;
  /** Computed cells refuse typing. */
  readonly locked: boolean;
}

/** Kept inside the workbook's own data, so that it is saved and restored with it. */
export interface PageMemory {
  /** Starter and title of the first plan filled in. */
  readonly starter: string;
  readonly title: string;
  readonly sheets: Readonly<Record<string, SheetMemory>>;
}

const noMemory: PageMemory = { starter: "", title: "", sheets: {} };

const memoryKey = "loamsheet";

/** Whether what a workbook keeps for this page is whole. */
export function holdsMemory(custom: unknown): boolean {
  if (!isRecord(custom)) return false;
  const kept = custom[memoryKey];
  if (kept === undefined) return true;
  if (!isRecord(kept) || typeof kept.title !== "string" || typeof kept.starter !== "string") return false;
  return isRecord(kept.sheets) && Object.values(kept.sheets).every(isSheetMemory);
}

function isSheetMemory(sheet: unknown): boolean {
  return isRecord(sheet) && isRecord(sheet.print) && Array.isArray(sheet.charts) && sheet.charts.every(isChart);
}

function isChart(chart: unknown): boolean {
  if (!isRecord(chart) || !isRange(chart.categories) || !isArea(chart.at) || !Array.isArray(chart.series)) return false;
  return chart.series.every((one: unknown) => isRecord(one) && isRange(one.values));
}

function isRange(range: unknown): boolean {
  return isRecord(range) && typeof range.sheet === "string" && isArea(range.area);
}

function isArea(area: unknown): boolean {
  return isRecord(area) && ["top", "left", "bottom", "right"].every((side) => typeof area[side] === "number");
}

export function memoryOf(workbook: Pick<IWorkbookData, "custom">): PageMemory {
  const kept: unknown = workbook.custom?.[memoryKey];
  // Written by withMemory alone.
  return kept ? (kept as PageMemory) : noMemory;
}

export function withMemory<Part extends Pick<IWorkbookData, "custom">>(workbook: Part, memory: PageMemory): Part {
  return { ...workbook, custom: { ...workbook.custom, [memoryKey]: memory } };
}
