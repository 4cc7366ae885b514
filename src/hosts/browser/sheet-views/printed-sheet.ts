import type { StyleName } from "../../../workbook/plan";
import type { CellReader } from "../../engine/read-cells";
import type { ChartLayer } from "../charts/chart-layer";
import { filledSize } from "./filled-size";
import type { OpenWorkbook } from "../open-workbook";
import { plannedCell } from "../data/planned-cell";

/** A sheet as paper shows it: the text of every cell with its look, and the charts as drawings. */
export interface PrintedSheet {
  readonly rows: readonly (readonly PrintedCell[])[];
  /** SVG with a title and a description each. */
  readonly charts: readonly string[];
}

export interface PrintedCell {
  readonly text: string;
  readonly look: StyleName | undefined;
  readonly isNumber: boolean;
}

/** Two side by side on a page, with letters that can still be read. */
const halfPage = { width: 400, height: 250 };

/** Nothing where there is no such sheet, or nothing on it. */
export function printedSheet(
  name: string,
  workbook: OpenWorkbook,
  reader: CellReader,
  charts: ChartLayer,
): PrintedSheet | undefined {
  const sheet = workbook.facade.getSheetByName(name);
  if (!sheet) return undefined;
  const model = sheet.getSheet();
  const { rows, columns } = filledSize(model, reader);
  if (rows === 0) return undefined;
  const shown = sheet.getRange(0, 0, rows, columns).getDisplayValues();
  const cells = shown.map((texts, row) =>
    texts.map((text, column): PrintedCell => ({
      text: String(text ?? "").trim(),
      look: plannedCell(model.getCellMatrix().getValue(row, column)).look,
      isNumber: typeof reader.valueAt(model, row, column) === "number",
    })),
  );
  return { rows: cells, charts: charts.drawings(sheet.getSheetId(), halfPage) };
}
