import { parseStructRef, type ReferenceIdentifier } from "@borgar/fx";
import type { CellIn, Matrix } from "../../../functions/frame/cell";
import { areaAddress, parseAddress, quotedSheet, sheetAddress, type SheetArea } from "../../../hosts/address";
import type { HostRange, HostValue, WorkbookHost } from "../../../hosts/port";
import { isErrorCode } from "../../../workbook/findings/reading/sheet-cells";
import { words } from "../../words";
import { unlessRefused } from "../unless-refused";
import { CannotShow } from "./cannot-show";

const say = words.working;

/** What the working asks of a host: it only reads. */
export type ReadingHost = Pick<WorkbookHost, "readSelection" | "read" | "taken">;

/** Where the cells that a formula points to are read. */
export interface Reader {
  readonly host: ReadingHost;
  readonly selected: HostRange;
}

/** A host that is asked for the same cells only once. */
export function askingOnce(host: ReadingHost): ReadingHost {
  const read = new Map<string, Promise<HostRange>>();
  let taken: ReturnType<ReadingHost["taken"]> | undefined;
  return {
    readSelection: () => host.readSelection(),
    taken: () => (taken ??= host.taken()),
    read(reference) {
      const known = read.get(reference) ?? host.read(reference);
      read.set(reference, known);
      return known;
    },
  };
}

/** The cells a reference of the selected cell points to, as a function would receive them. */
export async function readReference(node: ReferenceIdentifier, reader: Reader): Promise<Matrix<CellIn>> {
  return cellsOf(await findCells(node, reader));
}

/** The cells a reference of the selected cell points to, with their address. */
export async function findCells(node: ReferenceIdentifier, reader: Reader): Promise<HostRange> {
  if (node.kind === "beam") throw new CannotShow(say.wholeColumn(node.value));
  if (node.kind === "table") return readTable(node.value, reader);
  if (isElsewhere(node.value)) throw new CannotShow(say.elsewhere(node.value));
  const reference = node.kind === "range" ? onSheetOf(node.value, reader.selected) : node.value;
  return readThrough(reader.host, reference);
}

/** Several sheets at once, such as First:Last!A1, or another workbook, such as [Book.xlsx]Sheet1!A1. */
function isElsewhere(reference: string): boolean {
  return /[:[]/.test(reference.slice(0, Math.max(0, reference.lastIndexOf("!"))));
}

/** A reference without a sheet means the sheet of the selected cell. */
function onSheetOf(reference: string, selected: HostRange): string {
  const place = parseAddress(reference);
  const sheet = place?.sheet ?? parseAddress(selected.address)?.sheet;
  return place && sheet !== undefined ? sheetAddress(sheet, place.area) : reference;
}

/** One column of a table or several side by side: whole, or only the row of the selected cell. */
async function readTable(reference: string, reader: Reader): Promise<HostRange> {
  const { table = "", columns = [], sections = [] } = parseStructRef(reference) ?? {};
  const [first, last = first] = columns;
  const inThisRow = sections.length === 1 && sections[0]?.toLowerCase() === "this row";
  if (first === undefined || last === undefined || (sections.length > 0 && !inThisRow)) {
    throw new CannotShow(say.tablePart(reference));
  }
  const [left, right] = [await columnOf(table, first, reader), await columnOf(table, last, reader)];
  const row = parseAddress(reader.selected.address)?.area.top ?? -1;
  if (inThisRow && (row < left.area.top || row > left.area.bottom)) throw new CannotShow(say.notInTable(reference));
  const { top, bottom } = inThisRow ? { top: row, bottom: row } : left.area;
  const area = { top, bottom, left: left.area.left, right: right.area.right };
  return readThrough(reader.host, `${quotedSheet(left.sheet)}!${areaAddress(area)}`);
}

type Place = SheetArea & { readonly sheet: string };

/** Where a column of a table stands. Without a name it is the table that the selected cell is in. */
async function columnOf(table: string, column: string, reader: Reader): Promise<Place> {
  const inBrackets = `[${column.replace(/['#@[\]]/g, "'$&")}]`;
  if (table !== "") {
    const place = placeOf(await readThrough(reader.host, table + inBrackets));
    if (place) return place;
    throw new CannotShow(say.tablePart(table + inBrackets));
  }
  const { tables } = await reader.host.taken();
  const found = await Promise.all(tables.map((name) => placeIfThere(name + inBrackets, reader.host)));
  const around = found.filter((place) => place !== undefined && besides(place, reader.selected));
  const [only, another] = around;
  if (!only || another) throw new CannotShow(say.notInTable(inBrackets));
  return only;
}

function placeIfThere(reference: string, host: ReadingHost): Promise<Place | undefined> {
  return unlessRefused(
    async () => placeOf(await host.read(reference)),
    () => undefined,
  );
}

function placeOf({ address }: HostRange): Place | undefined {
  const place = parseAddress(address);
  return place?.sheet === undefined ? undefined : { sheet: place.sheet, area: place.area };
}

/** Whether a column has a cell in the row of the selected one. */
function besides({ sheet, area }: Place, selected: HostRange): boolean {
  const place = parseAddress(selected.address);
  return place?.sheet === sheet && place.area.top >= area.top && place.area.top <= area.bottom;
}

function readThrough(host: ReadingHost, reference: string): Promise<HostRange> {
  return unlessRefused(
    () => host.read(reference),
    (says) => {
      throw new CannotShow(say.cannotRead(reference, says));
    },
  );
}

/** The cells of a range as functions receive them. */
export function cellsOf(range: HostRange): Matrix<CellIn> {
  return range.values.map((row) => row.map(cellFrom));
}

function cellFrom(value: HostValue): CellIn {
  return isErrorCode(value) ? { code: value } : value;
}
