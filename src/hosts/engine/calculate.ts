import type { WorksheetFunction } from "../../functions/frame/declaration";
import type { WorkbookPlan } from "../../workbook/plan";
import type { CalculatedWorkbook } from "../calculated-workbook";
import { HeadlessEngine } from "./headless-engine";
import { MessageBook } from "./message-book";
import { CellReader } from "./read-cells";
import { registerFunctions } from "./register-functions";
import { workbookData, type SheetRoom } from "./workbook-data";

const room: SheetRoom = { rows: 200, columns: 20, atLeastRows: 0, atLeastColumns: 0 };

/** Started once: closing an engine while its timers run ends the process. */
let engine: HeadlessEngine | undefined;
let calculations = 0;

/**
 * Calculates a whole workbook without a spreadsheet program: native formulas and ours.
 *
 * @returns what every cell shows, spilled cells included
 */
export async function calculate(
  plan: WorkbookPlan,
  functions: readonly WorksheetFunction[],
): Promise<CalculatedWorkbook> {
  engine ??= new HeadlessEngine();
  const { injector } = engine;
  const messages = new MessageBook();
  // The engine keeps parsed formulas by workbook id: every calculation has its own.
  const id = `calculation-${++calculations}`;
  const sheets = plan.sheets.map((_, index) => `${id}-${index}`);
  return engine.run({
    data: workbookData(plan, { workbook: id, sheets }, room),
    prepare: () => registerFunctions(injector, functions, messages),
    read: (workbook) => new CellReader(injector, messages).readAll(workbook),
  });
}
