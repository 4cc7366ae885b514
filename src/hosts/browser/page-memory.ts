import type { IWorkbookData } from "@univerjs/core";
import type { ChartPlan, PrintPlan } from "../../workbook/plan";

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

export const noMemory: PageMemory = { starter: "", title: "", sheets: {} };

const memoryKey = "loamsheet";

export function memoryOf(workbook: Pick<IWorkbookData, "custom">): PageMemory {
  const kept: unknown = workbook.custom?.[memoryKey];
  // Written by withMemory alone.
  return kept ? (kept as PageMemory) : noMemory;
}

export function withMemory<Part extends Pick<IWorkbookData, "custom">>(workbook: Part, memory: PageMemory): Part {
  return { ...workbook, custom: { ...workbook.custom, [memoryKey]: memory } };
}
