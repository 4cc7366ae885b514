/** An error cell that one of our functions returned: where in its result it stood, and why. */
export interface RememberedError {
  readonly rowOffset: number;
  readonly columnOffset: number;
  readonly code: string;
  readonly message: string;
}

/** A cell by engine ids, rows and columns from 0. */
export interface EngineCell {
  readonly workbookId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** What one formula said in one calculation. */
interface Page {
  readonly calculation: number;
  readonly errors: RememberedError[];
  /** Keys of the other cells it filled with errors. */
  readonly spilled: string[];
}

/**
 * The sentences behind the errors in cells. The engine has no room for them in a cell, so they are kept here and
 * found again by the cell that shows the error.
 */
export class MessageBook {
  private calculation = 0;
  private readonly byFormula = new Map<string, Page>();
  private readonly bySpilledCell = new Map<string, RememberedError>();

  /** A calculation starts: what a cell said in an earlier one no longer counts once it is calculated again. */
  startCalculation(): void {
    this.calculation += 1;
  }

  /** A function in the formula of this cell was called and returned these errors, none if all went well. */
  remember(formulaCell: EngineCell, errors: readonly RememberedError[]): void {
    const page = this.pageOf(formulaCell);
    for (const error of errors) {
      page.errors.push(error);
      if (error.rowOffset === 0 && error.columnOffset === 0) continue;
      const row = formulaCell.row + error.rowOffset;
      const key = keyOf({ ...formulaCell, row, column: formulaCell.column + error.columnOffset });
      page.spilled.push(key);
      this.bySpilledCell.set(key, error);
    }
  }

  /** The sentence behind an error that a cell shows; a function inside a larger formula speaks for the whole. */
  messageAt(cell: EngineCell, code: string): string | undefined {
    const own = this.byFormula.get(keyOf(cell))?.errors ?? [];
    const exact = own.find((error) => error.code === code && error.rowOffset === 0 && error.columnOffset === 0);
    const nested = exact ?? own.find((error) => error.code === code);
    if (nested) return nested.message;
    const spilled = this.bySpilledCell.get(keyOf(cell));
    return spilled?.code === code ? spilled.message : undefined;
  }

  /** Forgets a workbook that was closed. */
  forget(workbookId: string): void {
    for (const notes of [this.byFormula, this.bySpilledCell]) {
      for (const key of notes.keys()) if (key.startsWith(`${workbookId}!`)) notes.delete(key);
    }
  }

  private pageOf(cell: EngineCell): Page {
    const key = keyOf(cell);
    const known = this.byFormula.get(key);
    if (known?.calculation === this.calculation) return known;
    for (const spilled of known?.spilled ?? []) this.bySpilledCell.delete(spilled);
    const page = { calculation: this.calculation, errors: [], spilled: [] };
    this.byFormula.set(key, page);
    return page;
  }
}

function keyOf({ workbookId, sheetId, row, column }: EngineCell): string {
  return `${workbookId}!${sheetId}!${row},${column}`;
}
