import { HostError, type HostRange, type HostValue } from "../../port";
import { rangeAt } from "../ranges";
import { runExcel } from "../run-excel";
import { hostWords } from "../../words";

/** More cells than this nobody reads in a pane, and Excel may refuse to hand them over. */
const mostCells = 20_000;

/** The selected cells. */
export function readSelection(): Promise<HostRange> {
  return runExcel((context) => readRange(context, context.workbook.getSelectedRange()));
}

export function readReference(reference: string): Promise<HostRange> {
  return runExcel((context) => readRange(context, rangeAt(reference, context)));
}

/** Brings cells in sight and selects them. */
export function showReference(reference: string): Promise<void> {
  return runExcel(async (context) => {
    const range = rangeAt(reference, context);
    range.worksheet.activate();
    range.select();
    await context.sync();
  });
}

async function readRange(context: Excel.RequestContext, range: Excel.Range): Promise<HostRange> {
  range.load("address,cellCount");
  await context.sync();
  // Excel says -1 for more cells than it counts.
  if (range.cellCount > mostCells || range.cellCount < 0) {
    throw new HostError(hostWords.excel.tooManyCells, "OperationCellsExceedLimit");
  }
  range.load("formulas,values");
  await context.sync();
  const formulas: (string | number | boolean)[][] = range.formulas;
  const values: HostValue[][] = range.values;
  return { address: range.address, formulas, values: values.map((row, index) => withBlanks(row, formulas[index])) };
}

/** Excel reports a blank cell as empty text; a formula may give empty text too. */
export function withBlanks(values: HostValue[], formulas: readonly unknown[] = []): HostValue[] {
  return values.map((value, column) => (value === "" && formulas[column] === "" ? null : value));
}
