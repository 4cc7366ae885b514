import { binEntry, buyersTerms, dryerFire, machinery } from "../../../../functions/cautions";
import { cautions } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { lossBlock } from "./loss-block";
import { storeBlock } from "./store-block";
import { grainTermsBlock, wetOrDryBlock } from "./wet-or-dry-blocks";
import { yieldCountBlocks } from "./yield-count-blocks";

export function harvestCheckSheet(context: FarmContext): SheetModel {
  return {
    key: "harvest-check",
    name: farmSheets["harvest-check"].name,
    tabColor: tabColors.answer,
    title: "Harvest check",
    answers: "What the fields will make, what stays on the ground, and whether to dry, store or sell.",
    blocks: [
      ...yieldCountBlocks(context),
      lossBlock(context),
      grainTermsBlock(),
      wetOrDryBlock(context),
      storeBlock(context),
      cautions(machinery, binEntry, dryerFire, buyersTerms),
    ],
    print: { orientation: "landscape" },
  };
}
