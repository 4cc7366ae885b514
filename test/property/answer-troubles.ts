import { isCellError } from "../../src/functions/frame";
import type { CellOut } from "../../src/functions/frame/cell";

const fourKinds = /^#(N\/A|VALUE!|NUM!|DIV\/0!)$/;
const ourFault = /^$|itself went wrong|undefined|NaN|\[object/;

/** What is wrong with an answer, in words; nothing when it is a rectangle of what may leave a function. */
export function answerTroubles(cells: readonly (readonly CellOut[])[]): string[] {
  const width = cells[0]?.length ?? 0;
  if (width === 0) return ["no cell at all"];
  if (cells.some((row) => row.length !== width)) return ["ragged rows"];
  return cells.flat().flatMap(cellTroubles);
}

function cellTroubles(cell: CellOut): string[] {
  if (isCellError(cell)) {
    if (!fourKinds.test(cell.code)) return [`error of another kind: ${cell.code}`];
    return ourFault.test(cell.message ?? "passed on") ? [`a sentence that will not do: ${cell.message}`] : [];
  }
  if (typeof cell === "number") return Number.isFinite(cell) ? [] : [`the number ${cell}`];
  return typeof cell === "string" || typeof cell === "boolean" ? [] : [`a ${typeof cell}`];
}
