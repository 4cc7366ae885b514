import type { CellError } from "../functions/frame/cell";

/** What a cell shows once everything is calculated; an error carries our sentence where it is ours. */
export type CalculatedValue = number | string | boolean | CellError;

/** Every cell of a workbook that holds something after calculation, spilled cells included. */
export interface CalculatedWorkbook {
  /** Undefined for an empty cell, and for a sheet that is not there. Rows and columns count from 0. */
  valueAt(sheet: string, row: number, column: number): CalculatedValue | undefined;
}

/** A calculated workbook held in memory: one map a sheet, one entry a cell. */
export class CalculatedCells implements CalculatedWorkbook {
  private readonly sheets = new Map<string, Map<string, CalculatedValue>>();

  set(sheet: string, row: number, column: number, value: CalculatedValue): void {
    const cells = this.sheets.get(sheet) ?? new Map<string, CalculatedValue>();
    this.sheets.set(sheet, cells);
    cells.set(`${row},${column}`, value);
  }

  valueAt(sheet: string, row: number, column: number): CalculatedValue | undefined {
    return this.sheets.get(sheet)?.get(`${row},${column}`);
  }
}
