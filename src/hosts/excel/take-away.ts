import type { FillReceipt } from "../port";
import { runExcel } from "./run-excel";

/** Deletes sheets and names, as far as they are there. A workbook keeps one sheet: an empty one takes their place. */
export async function takeAway({ sheets, names }: Pick<FillReceipt, "sheets" | "names">): Promise<void> {
  await runExcel(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name,items/visibility");
    const theirNames = names.map((name) => context.workbook.names.getItemOrNullObject(name).load("isNullObject"));
    await context.sync();
    const unwanted = new Set(sheets.map((name) => name.toLowerCase()));
    const isOurs = ({ name }: Excel.Worksheet) => unwanted.has(name.toLowerCase());
    const stays = worksheets.items.some((sheet) => sheet.visibility === "Visible" && !isOurs(sheet));
    if (!stays) worksheets.add();
    for (const name of theirNames) if (!name.isNullObject) name.delete();
    for (const sheet of worksheets.items.filter(isOurs)) sheet.delete();
    await context.sync();
  });
}
