import type { WorkbookPlan } from "../../../workbook/plan";
import { HostError, type FillOptions, type FillReceipt } from "../../port";
import { refuseTaken } from "../../refuse-taken";
import { hostErrorFrom } from "../describe-failure";
import { Requests } from "./requests";
import { runExcel } from "../run-excel";
import type { Supports } from "../supports";
import { readTaken } from "./taken";
import { takeAway } from "./take-away";
import { writeCells } from "./write-cells";
import { writeCharts } from "./write-charts";
import { writeLooks } from "./write-looks";
import { canAttachNotes, writeNotes } from "./write-notes";
import { writePrint } from "./write-print";
import { writeRules } from "./write-rules";
import { writeSheets } from "./write-sheets";
import { writeValidations } from "./write-validations";
import { hostWords } from "../../words";

const say = hostWords.excel;

/** Adds a plan to the open workbook, whole or not at all. */
export async function fillWorkbook(plan: WorkbookPlan, options: FillOptions, supports: Supports): Promise<FillReceipt> {
  const added = { sheets: plan.sheets.map(({ name }) => name), names: plan.names.map(({ name }) => name) };
  let begun = false;
  try {
    // Excel cannot merge protection into one step of Undo.
    await runExcel(
      async (context) => {
        refuseTaken(plan, await readTaken(context), say.taken);
        begun = true;
        await writePlan(plan, options, supports, new Requests(context));
      },
      { undoTogether: supports("1.20") && !options.protect },
    );
  } catch (failure) {
    if (begun) await undo(added, hostErrorFrom(failure));
    throw failure;
  }
  return { starter: plan.starter, ...added, ...leftOut(plan, supports) };
}

/** The stages of a fill, one request each unless it would grow too large. */
async function writePlan(
  plan: WorkbookPlan,
  { protect, onProgress }: FillOptions,
  supports: Supports,
  requests: Requests,
): Promise<void> {
  onProgress?.({ share: 0, doing: say.addingSheets });
  await writeSheets(plan, requests);
  await requests.send();

  onProgress?.({ share: 0.25, doing: say.writingCells });
  for (const sheet of plan.sheets) await writeCells(sheet, requests);
  await requests.send();

  onProgress?.({ share: 0.6, doing: say.settingLook });
  for (const sheet of plan.sheets) {
    await writeLooks(sheet, requests, protect);
    await writeValidations(sheet, requests);
    await writeRules(sheet, requests);
    await writeNotes(sheet, requests, supports);
    await writeCharts(sheet, requests);
    await writePrint(sheet, requests);
  }
  await finish(plan, requests, protect);
  await requests.send();
  onProgress?.({ share: 1, doing: say.done });
}

async function finish(plan: WorkbookPlan, requests: Requests, protect: boolean): Promise<void> {
  await requests.makeRoom({ steps: 3 + plan.sheets.length });
  if (protect) {
    for (const { name } of plan.sheets) {
      requests
        .sheet(name)
        .protection.protect({ allowFormatColumns: true, allowFormatRows: true, allowAutoFilter: true });
    }
  }
  const [first] = plan.sheets;
  if (first === undefined) return;
  requests.sheet(first.name).activate();
  requests.sheet(first.name).getRange("A1").select();
}

/** Takes back what a failed fill added, and says what happened in either case. */
async function undo(added: Pick<FillReceipt, "sheets" | "names">, failure: HostError): Promise<never> {
  try {
    await takeAway(added);
  } catch {
    throw new HostError(say.someStayed(failure.message, added.sheets), failure.code, { cause: failure });
  }
  throw new HostError(say.asBefore(failure.message), failure.code, { cause: failure });
}

function leftOut(plan: WorkbookPlan, supports: Supports): Pick<FillReceipt, "leftOut"> {
  const hasNotes = plan.sheets.some(({ notes }) => notes.length > 0);
  if (!hasNotes || canAttachNotes(supports)) return {};
  return { leftOut: [say.notesLeftOut] };
}
