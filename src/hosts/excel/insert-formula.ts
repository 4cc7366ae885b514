import { HostError } from "../port";
import { runExcel } from "./run-excel";

/** Writes a formula into the selected cell, if that is empty. */
export function insertFormula(formula: string): Promise<void> {
  return runExcel(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load("address,formulas");
    await context.sync();
    if (cell.formulas[0]?.[0] !== "") {
      throw new HostError(`${cell.address} is not empty. Select an empty cell, then insert again.`, "CellNotEmpty");
    }
    cell.formulas = [[formula]];
    await context.sync();
  });
}
