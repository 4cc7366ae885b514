import { HostError } from "../../port";
import { runExcel } from "../run-excel";
import { hostWords } from "../../words";

/** Writes a formula into the selected cell, if that is empty. */
export function insertFormula(formula: string): Promise<void> {
  return runExcel(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load("address,formulas");
    await context.sync();
    if (cell.formulas[0]?.[0] !== "") {
      throw new HostError(hostWords.excel.cellNotEmpty(cell.address), "CellNotEmpty");
    }
    cell.formulas = [[formula]];
    await context.sync();
  });
}
