import { areaAddress } from "../../../hosts/address";
import { HostError, type WorkbookHost } from "../../../hosts/port";
import type { CellPlace } from "../../../workbook/area";
import type { Finding, WorkbookReading } from "../../../workbook/findings";
import { valueAt } from "../../../workbook/findings/reading/sheet-cells";
import { words } from "../../words";
import { blocksOfCells, runsOfCells, type CellToWrite } from "./cells-to-write";
import { placeInWords, sheetIn } from "./snapshot";

const say = words.check;

/** What would be written to mend a finding; nothing where only a person can mend it. */
export function cellsToMend(finding: Finding): readonly CellToWrite[] {
  if (finding.kind === "typedOver") return [{ place: finding.at, content: finding.formula }];
  if (finding.kind !== "unknownName") return [];
  return finding.mendable.map(({ place, formula }) => ({ place, content: formula }));
}

/** What stands in those cells now, where it is something else. */
export function cellsBefore(finding: Finding): readonly CellToWrite[] {
  if (finding.kind === "typedOver") return [{ place: finding.at, content: finding.value }];
  if (finding.kind !== "unknownName") return [];
  const changed = finding.mendable.filter(({ was, formula }) => was !== formula);
  return changed.map(({ place, was }) => ({ place, content: was }));
}

/** Excel takes requests of a few megabytes: so many long formulas fit into one. */
const mostCellsAtOnce = 2000;

/** Writes the cells, as many at once as fit; fails with what the host says. */
export async function writeCells(host: WorkbookHost, cells: readonly CellToWrite[]): Promise<void> {
  if (cells.length === 0) return;
  await host.write(blocksOfCells(cells.slice(0, mostCellsAtOnce)), "formulas");
  await writeCells(host, cells.slice(mostCellsAtOnce));
}

/** What a host refuses for the whole workbook or sheet, so that there is no use in going on block by block. */
const refusedForAll = new Set(["AccessDenied", "InvalidOperationInCellEditMode", "ServiceNotAvailable"]);

/**
 * Writes the cells to mend. Where the spreadsheet refuses some, such as a part of an array, the others are written all
 * the same; resolves with those that were not. Fails when none could be written.
 */
export async function mendCells(host: WorkbookHost, cells: readonly CellToWrite[]): Promise<readonly CellToWrite[]> {
  try {
    await writeCells(host, cells);
    return [];
  } catch (thrown) {
    if (!(thrown instanceof HostError) || refusedForAll.has(thrown.code)) throw thrown;
    const refused = await refusedOf(host, runsOfCells(cells));
    if (refused.length === cells.length) throw thrown;
    return refused;
  }
}

/** Run by run, and the cells of a refused one each by itself. */
async function refusedOf(
  host: WorkbookHost,
  runs: readonly (readonly CellToWrite[])[],
): Promise<readonly CellToWrite[]> {
  const refused: CellToWrite[] = [];
  for (const run of runs) {
    try {
      await writeCells(host, run);
    } catch (thrown) {
      if (!(thrown instanceof HostError)) throw thrown;
      const one = run.map((cell) => [cell]);
      refused.push(...(run.length > 1 ? await refusedOf(host, one) : run));
    }
  }
  return refused;
}

/** What a mending came to, after the workbook was read again. */
export async function outcomeOf(
  finding: Finding,
  host: WorkbookHost,
  refused: readonly CellToWrite[] = [],
): Promise<string> {
  if (finding.kind !== "unknownName") return say.putBackDone(placeInWords(finding.at));
  const reading = await host.readSheets();
  const written = finding.mendable.filter(({ place }) => !isAmong(refused, place));
  const still = written.filter(({ place }) => showsNoName(reading, place)).length;
  return say.repairDone(written.length, still, runsOfCells(refused).map(runInWords));
}

export function isAmong(cells: readonly CellToWrite[], { sheet, row, column }: CellPlace): boolean {
  return cells.some(({ place }) => place.sheet === sheet && place.row === row && place.column === column);
}

function runInWords(run: readonly CellToWrite[]): string {
  const [first, last] = [run[0]?.place, run.at(-1)?.place];
  if (!first || !last) return "";
  return `${first.sheet} ${areaAddress({ top: first.row, left: first.column, bottom: last.row, right: last.column })}`;
}

function showsNoName(reading: WorkbookReading, place: CellPlace): boolean {
  const sheet = sheetIn(reading, place);
  return sheet !== undefined && valueAt(sheet, place.row, place.column) === "#NAME?";
}
