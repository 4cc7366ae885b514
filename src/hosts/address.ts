import type { Area } from "../workbook/plan";
import { columnLetters, fixedAddress, sheetPrefix } from "../workbook/write/address";
import type { CellAt } from "../workbook/area";

/** "B7". */
export function cellAddress({ row, column }: CellAt): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** "B7" or "C3:D9". */
export function areaAddress({ top, left, bottom, right }: Area): string {
  const first = cellAddress({ row: top, column: left });
  return top === bottom && left === right ? first : `${first}:${cellAddress({ row: bottom, column: right })}`;
}

/** "Fields!B7" or "'Potash plan'!C3:D9". */
export function sheetAddress(sheet: string, area: Area): string {
  return sheetPrefix(sheet) + areaAddress(area);
}

/** "Fields!$B$7" or "'Potash plan'!$C$3:$D$9". */
export function absoluteAddress(sheet: string, area: Area): string {
  return sheetPrefix(sheet) + fixedAddress(area);
}

/** A sheet name as formulas write it, in quotes where it needs them. */
export function quotedSheet(sheet: string): string {
  return sheetPrefix(sheet).slice(0, -1);
}

export interface SheetArea {
  readonly sheet: string | undefined;
  readonly area: Area;
}

/** Last row and column of a sheet: what reads like a cell past them, such as YLD2025, is a name. */
const lastCell = { row: 1_048_575, column: 16_383 } as const;

/** Reads "Fields!B7", "'Potash plan'!$C$3:$D$9" or "B7"; nothing when it is not an address. */
export function parseAddress(address: string): SheetArea | undefined {
  const match = /^(?:(?:'((?:[^']|'')+)'|([^'!]+))!)?\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?$/i.exec(
    address.trim(),
  );
  if (!match) return undefined;
  const [, quoted, plain, firstColumn = "", firstRow = "", lastColumn = firstColumn, lastRow = firstRow] = match;
  const columns = [columnNumber(firstColumn), columnNumber(lastColumn)];
  const rows = [Number(firstRow) - 1, Number(lastRow) - 1];
  const area = {
    top: Math.min(...rows),
    left: Math.min(...columns),
    bottom: Math.max(...rows),
    right: Math.max(...columns),
  };
  if (area.top < 0 || area.bottom > lastCell.row || area.right > lastCell.column) return undefined;
  return { sheet: quoted?.replace(/''/g, "'") ?? plain, area };
}

/** Reads an address that names its sheet, with or without the "=" that names of cells are kept with. */
export function parseSheetAddress(address: string): (SheetArea & { readonly sheet: string }) | undefined {
  const { sheet, area } = parseAddress(address.replace(/^=/, "")) ?? {};
  return sheet === undefined || area === undefined ? undefined : { sheet, area };
}

export interface TableColumn {
  readonly table: string;
  readonly column: string;
}

/** Reads Table[Column]: inside the brackets an apostrophe makes the next character an ordinary one. */
export function parseTableColumn(reference: string): TableColumn | undefined {
  const [, table, column] = /^([\p{L}_][\p{L}\d_.]*)\[(.+)\]$/u.exec(reference) ?? [];
  return table === undefined || column === undefined ? undefined : { table, column: column.replace(/'(.)/g, "$1") };
}

function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
