import type { Injector } from "@univerjs/core";
import { IFunctionService } from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import type { WorksheetFunction } from "../../functions/frame/declaration";
import { describeFunction } from "./describe-function";
import { EngineFunction } from "./engine-function";
import { indexInTables } from "./index-in-tables";
import type { MessageBook } from "./message-book";

/** Lets an engine calculate every worksheet function, and look things up in tables on other sheets. */
export function registerFunctions(
  injector: Injector,
  functions: readonly WorksheetFunction[],
  messages: MessageBook,
): void {
  injector
    .get(IFunctionService)
    .registerExecutors(...functions.map((fn) => new EngineFunction(fn, messages)), ...indexInTables(injector));
}

/** Lets a grid offer every worksheet function while a formula is typed, with hints about its arguments. */
export function describeFunctions(injector: Injector, functions: readonly WorksheetFunction[]): void {
  injector.get(IDescriptionService).registerDescriptions(functions.map(describeFunction));
}
