import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { isCellError, type CellIn, type CellOut, type RawArgument } from "../../functions/frame/cell";

/** An argument of the engine as our functions take it: blanks become null, errors keep their code. */
export function toRawArgument(value: BaseValueObject): RawArgument {
  if (!(value instanceof ArrayValueObject)) return toCellIn(value);
  return value.getArrayValue().map((row) => row.map(toCellIn));
}

function toCellIn(value: Nullable<BaseValueObject>): CellIn {
  if (!value || value.isNull()) return null;
  if (value instanceof ErrorValueObject) return { code: value.getErrorType() };
  const plain = value.getValue();
  if (value.isNumber()) return Number(plain);
  if (value.isBoolean()) return Boolean(plain);
  return typeof plain === "string" ? plain : null;
}

/** A result of ours for the engine: a single value, or a block that spills. */
export function toEngineValue(cells: readonly (readonly CellOut[])[]): BaseValueObject {
  const first = cells[0];
  if (first === undefined || first.length === 0) return ErrorValueObject.create(ErrorType.CALC);
  if (cells.length === 1 && first.length === 1) return toValueObject(first[0] ?? "");
  return ArrayValueObject.create({
    calculateValueList: cells.map((row) => row.map(toValueObject)),
    rowCount: cells.length,
    columnCount: first.length,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function toValueObject(cell: CellOut): BaseValueObject {
  if (typeof cell === "number") return NumberValueObject.create(cell);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  if (isCellError(cell)) return ErrorValueObject.create(errorTypeOf(cell.code));
  return StringValueObject.create(cell);
}

const errorTypes: ReadonlyMap<string, ErrorType> = new Map(Object.values(ErrorType).map((type) => [type, type]));

/** The engine's error of this code; #VALUE! for one it does not know. */
function errorTypeOf(code: string): ErrorType {
  return errorTypes.get(code) ?? ErrorType.VALUE;
}

export function isErrorCode(text: string): boolean {
  return errorTypes.has(text);
}
