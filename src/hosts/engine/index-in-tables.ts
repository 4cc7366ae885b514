import type { Injector } from "@univerjs/core";
import {
  BaseReferenceObject,
  functionLookup,
  IFormulaCurrentConfigService,
  type BaseFunction,
  type FunctionVariantType,
} from "@univerjs/engine-formula";

/**
 * The engine's own INDEX, told on which sheet a table lies. Its references into a table carry the sheet's id but
 * not its name, and the cell that INDEX picks is then sought on the sheet of the formula.
 */
export function indexInTables(injector: Injector): BaseFunction[] {
  const found = functionLookup.find(([, name]) => name === "INDEX");
  if (found === undefined) return [];
  const [Index] = found as [new (name: string) => BaseFunction, string]; // the list mixes classes of many signatures
  const config = injector.get(IFormulaCurrentConfigService);
  const index = new Index("INDEX");
  const calculate = index.calculate.bind(index) as (...values: FunctionVariantType[]) => FunctionVariantType;
  index.calculate = (...values: FunctionVariantType[]) => {
    nameSheet(values[0], config);
    return calculate(...values);
  };
  return [index];
}

function nameSheet(value: FunctionVariantType | undefined, config: IFormulaCurrentConfigService): void {
  if (!(value instanceof BaseReferenceObject) || !value.isTable()) return;
  const sheetsByName = config.getSheetNameMap()[value.getUnitId()] ?? {};
  const [name] = Object.entries(sheetsByName).find(([, id]) => id === value.getForcedSheetId()) ?? [];
  if (name !== undefined) value.setForcedSheetName(name);
}
