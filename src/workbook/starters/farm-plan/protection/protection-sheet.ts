import { capitalized } from "../../../../core/capitalized";
import { sprayLimits } from "../../../../core/protection/spray-limits";
import { controlIsTheLabels, labelLaw, mixingLaw } from "../../../../functions/cautions";
import { formula } from "../../../formula/expression";
import { whenNumbers } from "../../../formula/natives";
import type { Block, EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { within } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { cautions } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { protectionExamples, sprayerExample } from "../../../scenario/protection-examples";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { groupsBlock } from "./groups-block";
import { programBlock, sprayer } from "./program-block";

const invented = "All amounts, prices and the words on control below are invented: take yours from the labels.";

export function protectionSheet(context: FarmContext): SheetModel {
  return {
    key: "protection",
    name: farmSheets.protection.name,
    tabColor: tabColors.answer,
    title: "Protection program",
    answers:
      "Which herbicide groups stand against the driver weed of each crop, what an acre costs, and what goes into a tank.",
    blocks: [
      cautions(labelLaw, controlIsTheLabels, mixingLaw, ...(context.withDemo ? [invented] : [])),
      sprayerBlock(),
      ...context.crops.flatMap(({ crop }): Block[] => [
        {
          kind: "entries",
          key: `program.${crop}`,
          title: capitalized(crop),
          entries: [driverWeed(context.withDemo ? protectionExamples[crop].driverWeed : null)],
        },
        programBlock(crop, context.withDemo),
        groupsBlock(crop),
      ]),
    ],
    print: { orientation: "landscape" },
  };
}

function driverWeed(start: string | null): Entry {
  return typedEntry({ key: "weed", label: "Driver weed", says: "The weed that decides the program." }, start);
}

function sprayerBlock(): EntriesBlock {
  const { tankGal, gallonsPerAc } = sprayerExample;
  return {
    kind: "entries",
    key: "sprayer",
    title: "Sprayer",
    entries: [
      typedEntry(
        { key: "tank", label: "Tank", unit: "gal", format: formats.whole },
        tankGal,
        within(sprayLimits.tank, "Spray that the tank holds"),
      ),
      typedEntry(
        {
          key: "volume",
          label: "Spray volume",
          unit: "gal/ac",
          format: formats.one,
          says: "The labels set the least.",
        },
        gallonsPerAc,
        within(sprayLimits.volume, "Spray volume"),
      ),
      computedEntry(
        { key: "acres", label: "A full tank sprays", unit: "ac", format: formats.one },
        whenNumbers([sprayer("tank"), sprayer("volume")], formula`${sprayer("tank")}/${sprayer("volume")}`),
      ),
    ],
  };
}
