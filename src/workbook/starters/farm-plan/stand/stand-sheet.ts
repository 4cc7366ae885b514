import { replantGain } from "../../../../functions/seed/replant";
import { cautions, remarks } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { againBlock, decisionBlock } from "./replant-block";
import { countsBlock, foundBlock, standBlock } from "./stand-blocks";

export function standSheet(context: FarmContext): SheetModel {
  return {
    key: "stand",
    name: farmSheets.stand.name,
    tabColor: tabColors.answer,
    title: "Stand and replant",
    answers: "How thick a stand is, how sure that is, what it may yield, and whether replanting would gain.",
    blocks: [
      standBlock(context),
      countsBlock(context),
      foundBlock(),
      againBlock(context),
      decisionBlock(),
      remarks(
        "Leave a margin: replanting should bring clearly more than the stand you have. Check the tables against the current bulletin.",
      ),
      cautions(...(replantGain.cautions ?? [])),
    ],
    widths: [27, 14, 14, 58],
    print: { orientation: "portrait", onePage: true },
  };
}
