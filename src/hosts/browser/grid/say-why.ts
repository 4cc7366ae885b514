import { CellAlertManagerService } from "@univerjs/preset-sheets-core";
import { isCellError } from "../../../functions/frame/cell";
import type { CellReader } from "../../engine/read-cells";
import { gridWords } from "./grid-words";
import type { OpenWorkbook } from "../open-workbook";
import type { Grid } from "./start-grid";

const { title } = gridWords["sheets-formula-ui"].error;

/** The note beside a cell without a number says our own sentence where there is one, in place of a general one. */
export function sayWhy({ univer }: Grid, workbook: OpenWorkbook, reader: CellReader): void {
  const alerts = univer.__getInjector().get(CellAlertManagerService);
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert) => {
    const { row, col, subUnitId } = alert.location;
    const sheet = workbook.model.getSheetBySheetId(subUnitId);
    const value = sheet ? reader.valueAt(sheet, row, col) : undefined;
    const ours = alert.title === title && isCellError(value) ? value.message : undefined;
    show(ours === undefined ? alert : { ...alert, message: ours });
  };
}
