import { HostError, type HostRange, type HostValue } from "../port";
import { areaAddress, parseAddress } from "../address";
import { runExcel } from "./run-excel";
import { hostWords } from "../words";

/** More cells than this nobody reads in a pane, and Excel may refuse to hand them over. */
const mostCells = 20_000;

/** The selected cells. */
export function readSelection(): Promise<HostRange> {
  return runExcel((context) => readRange(context, context.workbook.getSelectedRange()));
}

/**
 * The cells at an address such as "Fields!B7", on the sheet in sight when it names none; those of a name; or those of a
 * table column such as "Fields[Acres]".
 */
export function readAddress(address: string): Promise<HostRange> {
  return runExcel((context) => readRange(context, rangeAt(context, address)));
}

/** Brings the cells at an address in sight and selects them; takes the same addresses as a read. */
export function showAddress(address: string): Promise<void> {
  return runExcel(async (context) => {
    const range = rangeAt(context, address);
    range.worksheet.activate();
    range.select();
    await context.sync();
  });
}

function rangeAt({ workbook }: Excel.RequestContext, address: string): Excel.Range {
  const place = parseAddress(address);
  if (place !== undefined) {
    const sheet =
      place.sheet === undefined ? workbook.worksheets.getActiveWorksheet() : workbook.worksheets.getItem(place.sheet);
    return sheet.getRange(areaAddress(place.area));
  }
  const [, table, column] = /^([\p{L}_][\p{L}\d_.]*)\[(.+)\]$/u.exec(address) ?? [];
  if (table === undefined || column === undefined) return workbook.names.getItem(address).getRange();
  // Inside the brackets an apostrophe makes the next character an ordinary one.
  return workbook.tables.getItem(table).columns.getItem(column.replace(/'(.)/g, "$1")).getDataBodyRange();
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
