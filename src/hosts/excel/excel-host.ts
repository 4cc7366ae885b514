import type { WorkbookHost } from "../port";
import { fillWorkbook } from "./fill-workbook";
import { insertFormula } from "./insert-formula";
import { excelFacts } from "./excel-facts";
import { readReference, readSelection, showReference } from "./read-range";
import { readSheets } from "./read-sheets";
import { runExcel } from "./run-excel";
import { excelSupports, type Supports } from "./supports";
import { takeAway } from "./take-away";
import { readTaken } from "./taken";
import { writeBlocks } from "./write-blocks";

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
