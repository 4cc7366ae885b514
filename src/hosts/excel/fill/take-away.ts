import { HostError, type FillReceipt } from "../../port";
import { hostErrorFrom } from "../describe-failure";
import { runExcel } from "../run-excel";
import { hostWords } from "../../words";

/**
 * Deletes sheets and names, as far as they are there. A workbook keeps one sheet: an empty one takes their place. Excel
 * gives no deleted sheet back; what stopped half-way can be begun again.
 */
export async function takeAway({ sheets, names }: Pick<FillReceipt, "sheets" | "names">): Promise<void> {
  let begun = false;
  const work = runExcel(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name,items/visibility");
    const theirNames = names.map((name) => context.workbook.names.getItemOrNullObject(name).load("isNullObject"));
    await context.sync();
    const unwanted = new Set(sheets.map((name) => name.toLowerCase()));
    const isOurs = ({ name }: Excel.Worksheet) => unwanted.has(name.toLowerCase());
    const stays = worksheets.items.some((sheet) => sheet.visibility === "Visible" && !isOurs(sheet));
    if (!stays) worksheets.add();
    begun = true;
    for (const name of theirNames) if (!name.isNullObject) name.delete();
    for (const sheet of worksheets.items.filter(isOurs)) sheet.delete();
    await context.sync();
  });
  await work.catch((thrown: unknown) => {
    const { message, code } = hostErrorFrom(thrown);
    if (!begun) throw thrown;
    throw new HostError(hostWords.excel.halfWay(message), code, { cause: thrown });
  });
}
