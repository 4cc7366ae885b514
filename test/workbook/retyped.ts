import type { CellPlan, WorkbookPlan } from "../../src/workbook/plan";

/** The plan with something else in one cell, its look as it was; null empties it. */
export function retyped(
  plan: WorkbookPlan,
  sheet: string,
  spot: { readonly row: number; readonly column: number },
  content: Exclude<CellPlan["content"], undefined> | null,
): WorkbookPlan {
  const change = (cell: CellPlan): CellPlan => {
    if (cell.row !== spot.row || cell.column !== spot.column) return cell;
    const { row, column, style, format } = cell;
    return { row, column, style, ...(format !== undefined && { format }), ...(content !== null && { content }) };
  };
  const sheets = plan.sheets.map((each) => (each.name === sheet ? { ...each, cells: each.cells.map(change) } : each));
  return { ...plan, sheets };
}
