import type { OpenWorkbook } from "../open-workbook";
import { plannedCell } from "../data/planned-cell";
import type { Grid } from "./start-grid";

/** A click on a cell that leads to another sheet shows that sheet. */
export function followLinks({ api }: Grid, workbook: OpenWorkbook): void {
  api.addEvent(api.Event.CellClicked, ({ row, column }) => {
    const { link } = plannedCell(workbook.model.getActiveSheet().getCellMatrix().getValue(row, column));
    const target = link === undefined ? null : workbook.facade.getSheetByName(link);
    if (target) workbook.facade.setActiveSheet(target);
  });
}
