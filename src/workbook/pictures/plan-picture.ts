import { planWorkbook } from "../plan-workbook";
import type { WorkbookPlan } from "../plan";
import type { TakenNames } from "../taken-names";
import { blocksSheet } from "./blocks-sheet";
import { gridSheet } from "./grid-sheet";
import { driftSheet, ledgerSheet } from "./nutrient-sheets";
import { pairsSheet } from "./pairs-sheet";
import { sheetOf, type PictureSheet } from "./picture-sheet";
import type { Picture } from "./picture";
import { tornadoSheet } from "./tornado-sheet";

/**
 * A picture of the pane as one new sheet: its numbers tied to the person's cells where they come from there, and a chart
 * or a coloured table of them.
 *
 * @param madeOn the day in words
 * @param taken names of the workbook it goes into
 */
export function planPicture(picture: Picture, madeOn: string, taken: TakenNames): WorkbookPlan {
  const sheet = sheetFor(picture);
  return planWorkbook(
    { starter: "picture", title: `${sheet.name}, ${madeOn}`, sheets: [sheetOf(sheet, madeOn)] },
    taken,
  );
}

function sheetFor(picture: Picture): PictureSheet {
  switch (picture.kind) {
    case "ledger":
      return ledgerSheet(picture);
    case "drift":
      return driftSheet(picture);
    case "grid":
      return gridSheet(picture);
    case "tornado":
      return tornadoSheet(picture);
    case "pairs":
      return pairsSheet(picture);
    case "blocks":
      return blocksSheet(picture);
  }
}
