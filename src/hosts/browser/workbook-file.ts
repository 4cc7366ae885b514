import type { WorkbookPlan } from "../../workbook/plan";
import type { CalculatedWorkbook } from "../calculated-workbook";
import { writeXlsx } from "../xlsx/write-xlsx";

const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** A workbook as a file to save, named after its title. */
export async function workbookFile(plan: WorkbookPlan, values: CalculatedWorkbook): Promise<File> {
  const bytes = await writeXlsx(plan, values);
  const name = plan.title.replace(/[\\/:*?"<>|]/g, " ").trim() || "Workbook";
  return new File([new Uint8Array(bytes)], `${name}.xlsx`, { type });
}
