import type { MayReplace, WrittenBlock } from "../../port";
import { areaAddress, sheetAddress } from "../../address";
import { areaFrom } from "../../../workbook/area";
import { inTheWay, writtenArea } from "../../written-area";
import { hostErrorFrom } from "../describe-failure";
import { formerOf, putBack, type Former } from "./put-back";
import { rangeIn } from "../ranges";
import { runExcel } from "../run-excel";
import type { Supports } from "../supports";
import { writtenOf } from "../written-content";

/**
 * Writes blocks of cells after a look at what stands there: one request to look, one to write. Excel keeps what it did
 * before it refused, so that is put back.
 */
export async function writeBlocks(
  blocks: readonly WrittenBlock[],
  mayReplace: MayReplace,
  supports: Supports,
): Promise<void> {
  let former: readonly Former[] = [];
  try {
    await runExcel(
      async (context) => {
        const ranges = blocks.map((block) => rangeIn(writtenArea(block), context));
        for (const range of ranges) range.load("address,formulas,values");
        await context.sync();
        ranges.forEach((range, index) => {
          const block = blocks[index];
          if (block) refuseOccupied(block, range.formulas, mayReplace);
        });
        former = ranges.map(formerOf);
        ranges.forEach((range, index) => {
          range.formulas = (blocks[index]?.rows ?? []).map((row) =>
            row.map((cell) => (cell === null ? "" : writtenOf(cell))),
          );
        });
        await context.sync();
      },
      { undoTogether: supports("1.20") },
    );
  } catch (failure) {
    if (former.length > 0) await putBack(former, hostErrorFrom(failure));
    throw failure;
  }
}

/** Excel reports a blank cell as empty text; a formula that gives empty text is reported as the formula. */
function refuseOccupied(block: WrittenBlock, present: readonly (readonly unknown[])[], mayReplace: MayReplace): void {
  const { sheet, area } = writtenArea(block);
  present.forEach((row, down) =>
    row.forEach((cell, across) => {
      const isFormula = typeof cell === "string" && cell.startsWith("=");
      if (cell === "" || mayReplace === "formulas" || (mayReplace === "typedValues" && !isFormula)) return;
      const one = areaFrom({ row: area.top + down, column: area.left + across });
      const address = sheet === undefined ? areaAddress(one) : sheetAddress(sheet, one);
      throw inTheWay(address, mayReplace === "nothing" ? "something" : "formula");
    }),
  );
}
