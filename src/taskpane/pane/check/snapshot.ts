import { areaAddress, parseAddress, parseTableColumn, sheetAddress } from "../../../hosts/address";
import { areaFrom, rowsOf, type CellAt, type CellPlace } from "../../../workbook/area";
import { HostError, type HostRange, type TakenNames } from "../../../hosts/port";
import { contentAt, valueAt, wordsAt } from "../../../workbook/findings/reading/sheet-cells";
import { cellKey, type SheetReading, type WorkbookReading } from "../../../workbook/findings";
import type { Area } from "../../../workbook/plan";
import { words } from "../../words";
import type { ReadingHost } from "../formula/references";

/** A workbook as it was read, answering the questions that the working asks of a host, without going back to it. */
export class Snapshot implements ReadingHost {
  private selected: CellPlace | undefined;

  constructor(private readonly reading: WorkbookReading) {}

  /** The cell whose formula is worked out. */
  select(place: CellPlace): this {
    this.selected = place;
    return this;
  }

  async readSelection(): Promise<HostRange> {
    if (!this.selected) throw notThere(words.check.selection);
    return this.read(addressOf(this.selected));
  }

  async read(reference: string): Promise<HostRange> {
    const place = parseAddress(reference) ?? this.named(reference) ?? this.tableColumn(reference);
    if (place?.sheet === undefined) throw notThere(reference);
    return this.at(place.sheet, place.area);
  }

  async taken(): Promise<TakenNames> {
    const { sheets, names } = this.reading;
    return {
      sheets: sheets.map(({ name }) => name),
      names: names.map(({ name }) => name),
      tables: sheets.flatMap(({ tables }) => tables.map(({ name }) => name)),
    };
  }

  private named(reference: string) {
    return this.reading.names.find(({ name }) => same(name, reference));
  }

  /** The body of a table column, Table[Column]. */
  private tableColumn(reference: string): { sheet: string; area: Area } | undefined {
    const inTable = parseTableColumn(reference);
    if (!inTable) return undefined;
    for (const sheet of this.reading.sheets) {
      const table = sheet.tables.find((one) => same(one.name, inTable.table));
      if (!table) continue;
      const { top, bottom, left, right } = table.area;
      for (let column = left; column <= right; column++) {
        if (!same(wordsAt(sheet, top, column) ?? "", inTable.column)) continue;
        const last = table.totals ? bottom - 1 : bottom;
        return { sheet: sheet.name, area: { top: top + 1, bottom: last, left: column, right: column } };
      }
    }
    return undefined;
  }

  private at(name: string, area: Area): HostRange {
    const sheet = this.reading.sheets.find((one) => same(one.name, name));
    if (!sheet) throw notThere(name);
    const message = sheet.messages.get(cellKey(area.top, area.left));
    return {
      address: sheetAddress(sheet.name, area),
      formulas: cellsIn(area, ({ row, column }) => contentAt(sheet, row, column)),
      values: cellsIn(area, ({ row, column }) => valueAt(sheet, row, column)),
      ...(message !== undefined && { message }),
    };
  }
}

/** "Fields!B7", as a person names a cell. */
export function addressOf(place: CellPlace): string {
  return sheetAddress(place.sheet, areaFrom(place));
}

/** The sheet and the cell in words that need no quotation marks. */
export function placeInWords(place: CellPlace): string {
  return `${place.sheet} ${areaAddress(areaFrom(place))}`;
}

export function sheetIn({ sheets }: WorkbookReading, { sheet }: CellPlace): SheetReading | undefined {
  return sheets.find(({ name }) => name === sheet);
}

function cellsIn<T>(area: Area, of: (cell: CellAt) => T): T[][] {
  return rowsOf(area).map((row) => row.map(of));
}

function same(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

function notThere(what: string): HostError {
  return new HostError(words.check.notThere(what), "NotThere");
}
