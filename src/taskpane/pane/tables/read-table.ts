import { parseAddress, sheetAddress } from "../../../hosts/address";
import { areaFrom } from "../../../workbook/area";
import type { HostValue, WorkbookHost } from "../../../hosts/port";
import type { Area } from "../../../workbook/plan";
import { entriesOf, type Headers } from "../../../workbook/model/table";

/** The rows of a table by column key, and where they stand. */
export interface ReadTable<Column extends string> {
  readonly sheet: string;
  readonly rows: readonly Readonly<Record<Column, HostValue>>[];
  /** The address of the cell of a row and column. */
  at(row: number, column: Column): string;
}

/** Columns of ours are fewer than this. */
const mostColumns = 26;

/**
 * Reads a table of ours with two requests, whatever the number of its columns.
 *
 * @param name what the table is called in this workbook
 * @returns nothing where a column is missing
 */
export async function readTable<Column extends string>(
  host: WorkbookHost,
  name: string,
  { headers }: Headers<Column>,
  wanted: readonly Column[],
): Promise<ReadTable<Column> | undefined> {
  const [first] = entriesOf(headers);
  const place = first && parseAddress((await host.read(`${name}[${first[1]}]`)).address);
  if (place?.sheet === undefined) return undefined;
  const { sheet } = place;
  const area: Area = { ...place.area, top: place.area.top - 1, right: place.area.left + mostColumns - 1 };
  const [heads = [], ...values] = (await host.read(sheetAddress(sheet, area))).values;
  const columns = new Map(wanted.map((column) => [column, heads.indexOf(headers[column])]));
  if ([...columns.values()].some((index) => index < 0)) return undefined;
  // Every column wanted was found.
  const rowOf = (cells: readonly HostValue[]) =>
    Object.fromEntries(wanted.map((column) => [column, cells[columns.get(column) ?? 0] ?? null])) as Record<
      Column,
      HostValue
    >;
  return {
    sheet,
    rows: values.map(rowOf),
    at(row, column) {
      const [top, left] = [place.area.top + row, area.left + (columns.get(column) ?? 0)];
      return sheetAddress(sheet, areaFrom({ row: top, column: left }));
    },
  };
}

/** Whether a name in the workbook is one of ours, be it with the number that a second plan gives it. */
export function isNumbered(wanted: string, name: string): boolean {
  return name.toLowerCase().replace(/[ _]?\d+$/, "") === wanted.toLowerCase();
}
