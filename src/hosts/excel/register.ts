import { isCellError, type CellError, type CellOut, type RawArgument } from "../../functions/frame/cell";
import type { WorksheetFunction } from "../../functions/frame/declaration";
import { runFunction } from "../../functions/frame/run";
import { hostWords } from "../words";

/** The part of Excel's function runtime that registration needs; it is there before the rest of Office is. */
export interface FunctionRuntime {
  associate(id: string, call: (...args: RawArgument[]) => unknown): void;
  /** Looked up when a function is called: the page may finish loading after registration. */
  readonly Error: new (code: CustomFunctions.ErrorCode, message?: string) => object;
  readonly ErrorCode: typeof CustomFunctions.ErrorCode;
}

const registered = new Set<string>();

/** Makes every function callable from cells. */
export function register(functions: readonly WorksheetFunction[], runtime: FunctionRuntime): void {
  for (const fn of functions) {
    runtime.associate(fn.name, excelFunction(fn, runtime));
    registered.add(fn.name);
  }
}

/** Names of the functions that this page has handed to Excel. */
export function registeredFunctions(): readonly string[] {
  return [...registered];
}

/**
 * A worksheet function as Excel calls it: one argument per declared parameter, then Excel's own description of the
 * call, which is passed over. Returns a rectangle, as its metadata says. A lone error is thrown instead: that way its
 * sentence reaches the cell.
 */
export function excelFunction(
  fn: WorksheetFunction,
  runtime: FunctionRuntime,
): (...args: RawArgument[]) => unknown[][] {
  const arity = Object.keys(fn.args).length;
  return (...args) => {
    const cells = runFunction(fn, args.slice(0, arity));
    const [only, ...others] = cells.flat();
    if (only === undefined) throw excelError({ code: "#N/A", message: hostWords.excel.nothingToList }, runtime);
    if (others.length === 0 && isCellError(only)) throw excelError(only, runtime);
    return cells.map((row) => row.map((cell) => excelCell(cell, runtime)));
  };
}

function excelCell(cell: CellOut, runtime: FunctionRuntime): unknown {
  return isCellError(cell) ? excelError(cell, runtime) : cell;
}

/** Excel shows a sentence only behind #VALUE! and #N/A, and lets functions return only some of its errors. */
function excelError({ code, message }: CellError, runtime: FunctionRuntime): object {
  const { Error: RuntimeError, ErrorCode } = runtime;
  switch (code) {
    case "#VALUE!":
      return new RuntimeError(ErrorCode.invalidValue, message);
    case "#N/A":
      return new RuntimeError(ErrorCode.notAvailable, message);
    case "#NUM!":
      return new RuntimeError(ErrorCode.invalidNumber);
    case "#DIV/0!":
      return new RuntimeError(ErrorCode.divisionByZero);
    case "#NULL!":
      return new RuntimeError(ErrorCode.nullReference);
    default:
      return new RuntimeError(ErrorCode.invalidValue, message ?? hostWords.excel.cellShows(code));
  }
}
