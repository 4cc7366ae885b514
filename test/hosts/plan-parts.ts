import type { CellPlan, SheetPlan, StyleName, WorkbookPlan } from "../../src/workbook/plan";

export function cell(
  row: number,
  column: number,
  content: CellPlan["content"],
  style: StyleName = "body",
  format?: string,
): CellPlan {
  return { row, column, style, ...(content !== undefined && { content }), ...(format !== undefined && { format }) };
}

export function formula(text: string): { readonly formula: string } {
  return { formula: text };
}

export function sheet(name: string, cells: readonly CellPlan[], rest: Partial<SheetPlan> = {}): SheetPlan {
  return {
    name,
    columnWidths: [],
    rowHeights: {},
    cells,
    tables: [],
    validations: [],
    rules: [],
    charts: [],
    notes: [],
    print: { orientation: "portrait", fit: { wide: 1, tall: 0 }, footer: "" },
    ...rest,
  };
}

export function plan(sheets: readonly SheetPlan[], names: WorkbookPlan["names"] = []): WorkbookPlan {
  return { starter: "trial", title: "Trial", sheets, names };
}
