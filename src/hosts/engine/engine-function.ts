import { BaseFunction, type BaseValueObject } from "@univerjs/engine-formula";
import { isCellError, type CellOut } from "../../functions/frame/cell";
import type { WorksheetFunction } from "../../functions/frame/declaration";
import { namespace } from "../../functions/frame/formula-text";
import { runFunction } from "../../functions/frame/run";
import { toEngineValue, toRawArgument } from "./engine-cells";
import type { MessageBook, RememberedError } from "./message-book";

/** LOAM.NAME, as cells call it. */
export function fullName(fn: WorksheetFunction): string {
  return `${namespace}.${fn.name}`;
}

/** One of our worksheet functions as the engine calls it. */
export class EngineFunction extends BaseFunction {
  constructor(
    private readonly declared: WorksheetFunction,
    private readonly messages: MessageBook,
  ) {
    super(fullName(declared));
    this.minParams = 0;
    this.maxParams = Object.keys(declared.args).length;
  }

  override calculate(...values: BaseValueObject[]): BaseValueObject {
    const cells = runFunction(this.declared, values.map(toRawArgument));
    this.remember(cells);
    return toEngineValue(cells);
  }

  private remember(cells: readonly (readonly CellOut[])[]): void {
    const { unitId, subUnitId, row, column } = this;
    if (!unitId || !subUnitId) return;
    this.messages.remember({ workbookId: unitId, sheetId: subUnitId, row, column }, errorsIn(cells));
  }
}

function errorsIn(cells: readonly (readonly CellOut[])[]): RememberedError[] {
  const errors: RememberedError[] = [];
  cells.forEach((row, rowOffset) => {
    row.forEach((cell, columnOffset) => {
      if (!isCellError(cell) || cell.message === undefined) return;
      errors.push({ rowOffset, columnOffset, code: cell.code, message: cell.message });
    });
  });
  return errors;
}
