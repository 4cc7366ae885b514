import type { IResources } from "@univerjs/core";
import type { SheetPlan } from "../../workbook/plan";

/**
 * What a plugin of the engine keeps beside the cells: an entry for each sheet that has one.
 *
 * @param sheetIds one id a sheet, in the order of the sheets
 * @param entryOf nothing where a sheet has no entry
 */
export function sheetResource(
  plugin: string,
  sheets: readonly SheetPlan[],
  sheetIds: readonly string[],
  entryOf: (sheet: SheetPlan, id: string) => object | undefined,
): IResources[number] {
  const entries = sheets.flatMap((sheet, index) => {
    const id = sheetIds[index];
    const entry = id === undefined ? undefined : entryOf(sheet, id);
    return entry ? [[id, entry]] : [];
  });
  return { name: plugin, data: JSON.stringify(Object.fromEntries(entries)) };
}

/** The entries of a list, as one entry of its sheet. */
export function listed<Plan>(
  plans: readonly Plan[],
  dataOf: (plan: Plan, index: number) => object,
): object | undefined {
  return plans.length === 0 ? undefined : plans.map(dataOf);
}
