import { averageMachine, machinery } from "../../../../functions/cautions";
import { soilLoss } from "../../../../functions/cover/erosion";
import { cautions, remarks } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { compareBlock, passBlock, soilBlock } from "./compare-blocks";
import { machineBlock, machineTermsBlock, passCostBlock } from "./machine-blocks";

export function tillageSheet(context: FarmContext): SheetModel {
  return {
    key: "tillage",
    name: farmSheets.tillage.name,
    tabColor: tabColors.answer,
    title: "Passes and tillage",
    answers:
      "What a pass costs with your own machines, and what two tillage systems cost, burn and leave on the ground.",
    blocks: [
      machineTermsBlock(),
      machineBlock(context),
      passCostBlock(),
      passBlock(context),
      soilBlock(context),
      compareBlock(),
      remarks(
        "Yield and weed control may differ between systems too: set them beside these costs. Canopy and roots cut soil loss below what cover alone shows.",
      ),
      cautions(machinery, averageMachine, ...(soilLoss.cautions ?? [])),
    ],
    widths: [44, 18, 18, 18, 11, 12, 11, 11, 12, 12, 11],
    print: { orientation: "landscape" },
  };
}
