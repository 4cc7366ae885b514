import {
  CellValueType,
  type ICellData,
  type Injector,
  type Nullable,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { isCellError } from "../../functions/frame/cell";
import { namespace } from "../../functions/frame/formula-text";
import type { AreaSize } from "../../workbook/area";
import { CalculatedCells, type CalculatedValue } from "../calculated-workbook";
import type { HostValue } from "../port";
import { isErrorCode } from "./engine-cells";
import type { MessageBook } from "./message-book";

/** Reads what cells of an open workbook show: values, spilled values and the sentences behind errors. */
export class CellReader {
  constructor(
    private readonly injector: Injector,
    private readonly messages: MessageBook,
  ) {}

  /** Every cell that shows something. */
  readAll(workbook: Workbook): CalculatedCells {
    const cells = new CalculatedCells();
    for (const sheet of workbook.getSheets()) {
      for (let row = 0; row < sheet.getRowCount(); row++) {
        for (let column = 0; column < sheet.getColumnCount(); column++) {
          const value = this.valueAt(sheet, row, column);
          if (value !== undefined) cells.set(sheet.getName(), row, column, value);
        }
      }
    }
    return cells;
  }

  valueAt(sheet: Worksheet, row: number, column: number): CalculatedValue | undefined {
    const own = sheet.getCellMatrix().getValue(row, column);
    const cell = plainValue(own) !== undefined ? own : this.spilledCell(sheet, row, column);
    const value = plainValue(cell);
    if (typeof value !== "string" || !isErrorCode(value)) return value;
    const message = this.messageAt(sheet, row, column, value);
    return message === undefined ? { code: value } : { code: value, message };
  }

  /** What a cell shows, an error as its code. */
  shownAt(sheet: Worksheet, row: number, column: number): HostValue {
    const value = this.valueAt(sheet, row, column) ?? null;
    return isCellError(value) ? value.code : value;
  }

  /** A formula without a function of ours has nothing to say, whatever stood in its cell before. */
  private messageAt(sheet: Worksheet, row: number, column: number, code: string): string | undefined {
    const formula = this.formulaAt(sheet, row, column);
    if (formula !== undefined && !formula.toUpperCase().includes(`${namespace}.`)) return undefined;
    return this.messages.messageAt({ workbookId: sheet.getUnitId(), sheetId: sheet.getSheetId(), row, column }, code);
  }

  /** The formula of a cell, with its leading "="; undefined for a plain value and for a spilled cell. */
  formulaAt(sheet: Worksheet, row: number, column: number): string | undefined {
    // Formulas filled down are kept once and counted from there: only the engine can say what a cell's reads like.
    const cell = sheet.getCellMatrix().getValue(row, column);
    if (!cell?.f && !cell?.si) return undefined;
    const model = this.injector.get(FormulaDataModel);
    return model.getFormulaStringByCell(row, column, sheet.getSheetId(), sheet.getUnitId()) ?? cell.f ?? undefined;
  }

  /** Whether another cell's formula fills this one. */
  isSpilled(sheet: Worksheet, row: number, column: number): boolean {
    return (
      plainValue(sheet.getCellMatrix().getValue(row, column)) === undefined &&
      plainValue(this.spilledCell(sheet, row, column)) !== undefined
    );
  }

  /** Whether anything written or spilled stands in a cell. */
  holdsAnything(sheet: Worksheet, row: number, column: number): boolean {
    return this.formulaAt(sheet, row, column) !== undefined || this.valueAt(sheet, row, column) !== undefined;
  }

  /** Size of what the formula in a cell spills over; undefined where it stays in its cell. */
  spillAt(sheet: Worksheet, row: number, column: number): AreaSize | undefined {
    const ranges = this.injector.get(FormulaDataModel).getArrayFormulaRange();
    const range = ranges[sheet.getUnitId()]?.[sheet.getSheetId()]?.[row]?.[column];
    if (!range) return undefined;
    const size = { rows: range.endRow - range.startRow + 1, columns: range.endColumn - range.startColumn + 1 };
    return size.rows * size.columns > 1 ? size : undefined;
  }

  private spilledCell(sheet: Worksheet, row: number, column: number): Nullable<ICellData> {
    const spilled = this.injector.get(FormulaDataModel).getArrayFormulaCellData();
    return spilled[sheet.getUnitId()]?.[sheet.getSheetId()]?.[row]?.[column];
  }
}

/** A blank text result counts as text; a cell with nothing but a style is empty. */
function plainValue(cell: Nullable<ICellData>): number | string | boolean | undefined {
  const rich = cell?.p?.body?.dataStream;
  if (rich !== undefined) return rich.replace(/\r\n$/, "");
  const value = cell?.v;
  if (value === null || value === undefined) return undefined;
  return cell?.t === CellValueType.BOOLEAN ? Boolean(Number(value)) : value;
}
