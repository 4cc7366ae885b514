import type { WorkbookPlan } from "../../../workbook/plan";
import type { CalculatedWorkbook } from "../../calculated-workbook";
import { HostError } from "../../port";
import { readXlsx, type ReadWorkbook } from "../../xlsx/read/read-xlsx";
import { writeXlsx } from "../../xlsx/write-xlsx";
import { hostWords } from "../../words";

/** Reading a larger one could take the page down with everything in it. */
const mostBytes = 50_000_000;
const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** A workbook as a file to save, named after its title. */
export async function workbookFile(plan: WorkbookPlan, values: CalculatedWorkbook): Promise<File> {
  const bytes = await writeXlsx(plan, values);
  const name = plan.title.replace(/[\\/:*?"<>|]/g, " ").trim() || hostWords.files.untitled;
  return new File([new Uint8Array(bytes)], `${name}.xlsx`, { type });
}

/** Reads a file of ours; rejects with a sentence when it is too large, cannot be read or is none of ours. */
export async function readFile(file: File): Promise<ReadWorkbook> {
  if (file.size > mostBytes) {
    throw new HostError(hostWords.files.tooLarge, "TooLarge");
  }
  return readXlsx(new Uint8Array(await file.arrayBuffer()));
}
