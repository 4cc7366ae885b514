import { digging, drainageDesign, drainageLaw } from "../../../../functions/cautions";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { gainBlock, termsBlock, verdictBlock } from "./pay-blocks";
import { jobBlock, spacingBlock } from "./tile-blocks";

const taxes = "Arithmetic before tax, not loan or tax advice: ask how and how fast the price may be written off.";

export function drainageSheet(context: FarmContext): SheetModel {
  return {
    key: "drainage",
    name: farmSheets.drainage.name,
    tabColor: tabColors.answer,
    title: "Tile drainage",
    answers: "How far apart the lines should lie, what the job costs, and whether the gain pays for it.",
    blocks: [
      spacingBlock(context),
      jobBlock(context),
      gainBlock(context),
      termsBlock(),
      verdictBlock(),
      {
        kind: "paragraphs",
        title: "Before any work",
        style: "caution",
        paragraphs: [digging, drainageLaw, drainageDesign, taxes],
      },
    ],
    print: { orientation: "portrait", onePage: true },
  };
}
