import type { SheetPlan } from "../../../workbook/plan";
import { cellLooks, fontFamily } from "../../../workbook/styles";
import { sheetPrefix } from "../../../workbook/write/address";
import { areaAddress, cellAddress } from "../../address";
import { cellBlocks } from "./cell-blocks";
import type { Requests } from "./requests";
import { hostWords } from "../../words";

/** Writes constants, formulas and number formats of a sheet as blocks, then the links. */
export async function writeCells(plan: SheetPlan, requests: Requests): Promise<void> {
  for (const { area, formulas, formats } of cellBlocks(plan)) {
    await requests.makeRoom({ bytes: JSON.stringify([formulas, formats]).length });
    const range = requests.sheet(plan.name).getRange(areaAddress(area));
    // Excel leaves cells alone where a block holds null; its types do not say so.
    range.formulas = formulas;
    if (formats) range.numberFormat = formats;
  }
  for (const linked of plan.cells) {
    const { content, link } = linked;
    if (link === undefined || typeof content !== "string") continue;
    await requests.makeRoom({ steps: 6 });
    const cell = requests.sheet(plan.name).getRange(cellAddress(linked));
    cell.hyperlink = {
      documentReference: `${sheetPrefix(link)}A1`,
      textToDisplay: content,
      screenTip: hostWords.excel.goTo(link),
    };
    // Excel gives a link the font of its own links.
    cell.format.font.name = fontFamily;
    cell.format.font.size = cellLooks.body.size;
  }
}
