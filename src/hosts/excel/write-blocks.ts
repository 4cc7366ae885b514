import type { MayReplace, WrittenBlock, WrittenCell } from "../port";
import { areaAddress, sheetAddress } from "../address";
import { inTheWay, writtenArea } from "../written-area";
import { runExcel } from "./run-excel";
import type { Supports } from "./supports";
import { typedText } from "./typed-text";

/** Writes blocks of cells after a look at what stands there: one request to look, one to write. */
export function writeBlocks(
  blocks: readonly WrittenBlock[],
  mayReplace: MayReplace,
  supports: Supports,
): Promise<void> {
  return runExcel(
    async (context) => {
      const ranges = blocks.map((block) => rangeOf(block, context));
      for (const range of ranges) range.load("formulas");
      await context.sync();
      ranges.forEach((range, index) => {
        const block = blocks[index];
        if (block) refuseOccupied(block, range.formulas, mayReplace);
      });
      ranges.forEach((range, index) => {
        range.formulas = (blocks[index]?.rows ?? []).map((row) => row.map(writtenOf));
      });
      await context.sync();
    },
    { undoTogether: supports("1.20") },
  );
}

function rangeOf(block: WrittenBlock, { workbook: { worksheets } }: Excel.RequestContext): Excel.Range {
  const { sheet, area } = writtenArea(block);
  const at = sheet === undefined ? worksheets.getActiveWorksheet() : worksheets.getItem(sheet);
  return at.getRange(areaAddress(area));
}

/** Excel reports a blank cell as empty text; a formula that gives empty text is reported as the formula. */
function refuseOccupied(block: WrittenBlock, present: readonly (readonly unknown[])[], mayReplace: MayReplace): void {
  const { sheet, area } = writtenArea(block);
  present.forEach((row, down) =>
    row.forEach((cell, across) => {
      const isFormula = typeof cell === "string" && cell.startsWith("=");
      if (cell === "" || mayReplace === "formulas" || (mayReplace === "typedValues" && !isFormula)) return;
      const [top, left] = [area.top + down, area.left + across];
      const one = { top, left, bottom: top, right: left };
      const address = sheet === undefined ? areaAddress(one) : sheetAddress(sheet, one);
      throw inTheWay(address, mayReplace === "nothing" ? "something" : "formula");
    }),
  );
}

function writtenOf(cell: WrittenCell): string | number | boolean {
  if (cell === null) return "";
  if (typeof cell === "string") return typedText(cell);
  return typeof cell === "object" ? cell.formula : cell;
}
