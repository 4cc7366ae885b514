import type { Worksheet } from "@univerjs/core";
import { isCellError } from "../../../functions/frame/cell";
import {
  cellKey,
  type CellContent,
  type SheetReading,
  type ShownValue,
  type WorkbookReading,
} from "../../../workbook/findings";
import { parseSheetAddress } from "../../address";
import { areaOf } from "../../engine/ranges";
import type { CellReader } from "../../engine/read-cells";
import type { OpenWorkbook } from "../open-workbook";

/** The workbook of the page, read whole: every sheet in sight from its first cell to the last that shows something. */
export function readSheets(workbook: OpenWorkbook, reader: CellReader): WorkbookReading {
  const { facade, model } = workbook;
  return {
    sheets: model
      .getSheets()
      .filter((sheet) => !sheet.isSheetHidden())
      .map((sheet) => sheetReading(sheet, workbook, reader)),
    names: facade.getDefinedNames().flatMap((name) => {
      const place = parseSheetAddress(name.getFormulaOrRefString());
      return place ? [{ name: name.getName(), ...place }] : [];
    }),
    cutShort: [],
  };
}

function sheetReading(sheet: Worksheet, { facade }: OpenWorkbook, reader: CellReader): SheetReading {
  const formulas: CellContent[][] = [];
  const values: ShownValue[][] = [];
  const messages = new Map<string, string>();
  let lastRow = -1;
  for (let row = 0; row < sheet.getRowCount(); row++) {
    const [contents, shown]: [CellContent[], ShownValue[]] = [[], []];
    for (let column = 0; column < sheet.getColumnCount(); column++) {
      const value = reader.valueAt(sheet, row, column);
      if (isCellError(value) && value.message !== undefined) messages.set(cellKey(row, column), value.message);
      shown.push(isCellError(value) ? value.code : (value ?? null));
      contents.push(contentOf(sheet, row, column, reader, shown[column] ?? null));
    }
    if (shown.some((value) => value !== null)) lastRow = row;
    formulas.push(contents);
    values.push(shown);
  }
  const tables = facade
    .getTableList()
    .filter(({ subUnitId }) => subUnitId === sheet.getSheetId())
    // A totals row stands under its table in the grid.
    .map(({ name, range }) => ({ name, area: areaOf(range), totals: false }));
  const used = { formulas: formulas.slice(0, lastRow + 1), values: values.slice(0, lastRow + 1) };
  return { name: sheet.getName(), top: 0, left: 0, ...used, tables, messages };
}

/** A cell that another one's formula fills has nothing of its own. */
function contentOf(sheet: Worksheet, row: number, column: number, reader: CellReader, shown: ShownValue): CellContent {
  const formula = reader.formulaAt(sheet, row, column);
  if (formula !== undefined) return formula;
  return shown === null || reader.isSpilled(sheet, row, column) ? "" : shown;
}
