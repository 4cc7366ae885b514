import type { WorkbookHost } from "../port";
import { fillWorkbook } from "./fill/fill-workbook";
import { insertFormula } from "./cells/insert-formula";
import { excelFacts } from "./excel-facts";
import { readReference, readSelection, showReference } from "./cells/read-range";
import { readSheets } from "./cells/read-sheets";
import { runExcel } from "./run-excel";
import { excelSupports, type Supports } from "./supports";
import { takeAway } from "./fill/take-away";
import { readTaken } from "./fill/taken";
import { writeBlocks } from "./cells/write-blocks";

/** The workbook open in Excel. Formulas it writes need the functions registered, which the page with the pane does. */
export function excelHost(supports: Supports = excelSupports): WorkbookHost {
  return {
    kind: "excel",
    taken: () => runExcel(readTaken),
    fill: (plan, options) => fillWorkbook(plan, options, supports),
    remove: takeAway,
    readSelection,
    read: readReference,
    insertFormula,
    write: (blocks, mayReplace) => writeBlocks(blocks, mayReplace, supports),
    show: showReference,
    readSheets,
    facts: async () => excelFacts(supports),
    onSelectionChange: (listener) =>
      runExcel(async (context) => {
        context.workbook.onSelectionChanged.add(async () => listener());
        await context.sync();
      }),
  };
}
