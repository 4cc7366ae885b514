import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo, type IFunctionParam } from "@univerjs/engine-formula";
import type { Argument } from "../../functions/frame/arguments";
import { isBlank, type CellIn, type Matrix } from "../../functions/frame/cell";
import type { WorksheetFunction } from "../../functions/frame/declaration";
import { describeArgument } from "../../functions/frame/metadata";
import { fullName } from "./engine-function";

/** What the grid's autocomplete and argument hints say about a function. */
export function describeFunction(fn: WorksheetFunction): IFunctionInfo {
  return {
    functionName: fullName(fn),
    functionType: FunctionType.User,
    abstract: fn.summary,
    description: `${fn.summary} Gives ${fn.returns.says}${fn.returns.unit ? ` (${fn.returns.unit})` : ""}.`,
    functionParameter: Object.entries<Argument>(fn.args).map(([name, argument], index) =>
      describeParameter(name, argument, fn.example.call[index]),
    ),
  };
}

function describeParameter(
  name: string,
  argument: Argument,
  example: CellIn | Matrix<CellIn> | undefined,
): IFunctionParam {
  return {
    name,
    detail: describeArgument(argument),
    example: exampleText(example),
    require: argument.shape === "optional" ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    repeat: BooleanNumber.FALSE,
  };
}

function exampleText(example: CellIn | Matrix<CellIn> | undefined): string {
  if (Array.isArray(example)) return "A2:A9";
  const cell = example ?? null;
  if (typeof cell === "string" && !isBlank(cell)) return `"${cell}"`;
  return typeof cell === "number" || typeof cell === "boolean" ? String(cell) : "";
}
