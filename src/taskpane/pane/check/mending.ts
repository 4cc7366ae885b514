import type { WorkbookHost } from "../../../hosts/port";
import type { CellPlace, Finding } from "../../../workbook/findings";
import { valueAt } from "../../../workbook/findings/sheet-cells";
import { words } from "../../words";
import { blocksOfCells, type CellToWrite } from "./cells-to-write";
import { placeInWords, sheetIn } from "./snapshot";

const say = words.check;

/** What would be written to mend a finding; nothing where only a person can mend it. */
export function cellsToMend(finding: Finding): readonly CellToWrite[] {
  if (finding.kind === "typedOver") return [{ place: finding.at, content: finding.formula }];
  if (finding.kind !== "unknownName") return [];
  return finding.mendable.map(({ place, formula }) => ({ place, content: formula }));
}

/** What stands in those cells now. */
export function cellsBefore(finding: Finding): readonly CellToWrite[] {
  if (finding.kind === "typedOver") return [{ place: finding.at, content: finding.value }];
  return cellsToMend(finding);
}

/** Excel takes requests of a few megabytes: so many long formulas fit into one. */
const mostCellsAtOnce = 2000;

export async function writeCells(host: WorkbookHost, cells: readonly CellToWrite[]): Promise<void> {
  if (cells.length === 0) return;
  await host.write(blocksOfCells(cells.slice(0, mostCellsAtOnce)), "formulas");
  await writeCells(host, cells.slice(mostCellsAtOnce));
}

/** What a mending came to, after the workbook was read again. */
export async function outcomeOf(finding: Finding, host: WorkbookHost): Promise<string> {
  if (finding.kind !== "unknownName") return say.putBackDone(placeInWords(finding.at));
  const reading = await host.readSheets();
  const showsName = ({ row, column, ...place }: CellPlace): boolean => {
    const sheet = sheetIn(reading, { row, column, ...place });
    return sheet !== undefined && valueAt(sheet, row, column) === "#NAME?";
  };
  const still = finding.mendable.filter(({ place }) => showsName(place)).length;
  return say.repairDone(finding.mendable.length - still, finding.mendable.length);
}
