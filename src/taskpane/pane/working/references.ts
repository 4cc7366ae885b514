import { parseStructRef, type ReferenceIdentifier } from "@borgar/fx";
import type { CellIn, Matrix } from "../../../functions/frame/cell";
import { HostError, type HostRange, type HostValue, type WorkbookHost } from "../../../hosts/port";
import { words } from "../../words";
import { CannotShow } from "./cannot-show";

const say = words.working;

/** The cells a reference of the selected cell points to, as a function would receive them. */
export async function readReference(
  node: ReferenceIdentifier,
  selected: HostRange,
  host: WorkbookHost,
): Promise<Matrix<CellIn>> {
  if (node.kind === "beam") throw new CannotShow(say.wholeColumn(node.value));
  if (node.kind === "table") return readTable(node.value, selected, host);
  const reference = node.kind === "range" ? onSheetOf(node.value, selected.address) : node.value;
  return cellsOf(await readThrough(host, reference));
}

/** A reference without a sheet means the sheet of the selected cell. */
function onSheetOf(reference: string, selectedAddress: string): string {
  const bare = reference.replace(/\$/g, "");
  const end = selectedAddress.lastIndexOf("!");
  return reference.includes("!") || end < 0 ? bare : selectedAddress.slice(0, end + 1) + bare;
}

async function readTable(reference: string, selected: HostRange, host: WorkbookHost): Promise<Matrix<CellIn>> {
  const struct = parseStructRef(reference);
  const columns = struct?.columns ?? [];
  const sections = struct?.sections ?? [];
  const ofThisRow = sections.length === 1 && sections[0]?.toLowerCase() === "this row";
  if (columns.length !== 1 || (sections.length > 0 && !ofThisRow)) throw new CannotShow(say.tablePart(reference));
  const body = await readThrough(host, `${struct?.table ?? ""}[${columns[0]}]`);
  return ofThisRow ? [[cellInRow(body, selected, reference)]] : cellsOf(body);
}

/** The cell of a table column that stands in the row of the selected cell. */
function cellInRow(body: HostRange, selected: HostRange, reference: string): CellIn {
  const row = body.values[firstRow(selected.address) - firstRow(body.address)];
  if (!row) throw new CannotShow(say.notInTable(reference));
  return cellFrom(row[0] ?? null);
}

function firstRow(address: string): number {
  return Number(/\$?[A-Z]+\$?(\d+)(?::\$?[A-Z]+\$?\d+)?$/i.exec(address)?.[1]);
}

async function readThrough(host: WorkbookHost, reference: string): Promise<HostRange> {
  try {
    return await host.read(reference);
  } catch (thrown) {
    if (thrown instanceof HostError) throw new CannotShow(say.cannotRead(reference, thrown.message));
    throw thrown;
  }
}

function cellsOf(range: HostRange): Matrix<CellIn> {
  return range.values.map((row) => row.map(cellFrom));
}

function cellFrom(value: HostValue): CellIn {
  if (value === "") return null;
  return typeof value === "string" && isErrorCode(value) ? { code: value } : value;
}

/** Whether a cell shows a spreadsheet error rather than an answer. */
export function isErrorCode(value: HostValue): value is string {
  return typeof value === "string" && /^#[A-Z/0]+[!?]?$/.test(value);
}
