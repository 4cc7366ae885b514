import type { TakenNames } from "../../port";

/** Names that the open workbook uses already. One request. */
export async function readTaken(context: Excel.RequestContext): Promise<TakenNames> {
  const { worksheets, names, tables } = context.workbook;
  worksheets.load("items/name");
  names.load("items/name");
  tables.load("items/name");
  await context.sync();
  return {
    sheets: worksheets.items.map(({ name }) => name),
    names: names.items.map(({ name }) => name),
    tables: tables.items.map(({ name }) => name),
  };
}
