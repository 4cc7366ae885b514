import { standYield as standYieldOf } from "../../core/seed/stand-yield";
import { sheetDate } from "../sheet-date";
import { line, optional, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import {
  everyStandRow,
  hybrid,
  plants,
  standCrop,
  standGuide,
  standRowWidth,
  unevenLossArgument,
} from "./stand-table-arguments";

export const standYield = worksheetFunction({
  name: "STANDYIELD",
  family: "seed",
  summary: "Share of full yield left by planting date and stand.",
  asks: ["yield of a thin stand", "what does late planting cost", "is this stand enough", "yield by population"],
  args: {
    crop: standCrop,
    plantingDate: optional(
      sheetDate({ says: "day it was planted; the year does not matter" }),
      null,
      "waited for, but for wheat, whose tables know no date",
    ),
    stand: plants("established plants"),
    guide: standGuide,
    unevenLoss: unevenLossArgument,
    hybrid: hybrid("hybrid planted"),
    rowWidth: standRowWidth,
  },
  returns: { shape: "one", unit: "%", says: "percent of the yield of a full stand planted in good time" },
  sources: [
    "isu-pm1885-2001",
    "isu-ipm0001",
    "nafziger-1994",
    "wisconsin-lauer-2003",
    "illinois-bulletin-2009",
    "pennstate-soybean-2019",
    "pennstate-wheat-stand",
    "ontario-wheat-stand-2012",
  ],
  example: {
    call: ["corn", "2026-04-28", 24_000, "Iowa 2001"],
    gives: 94,
    because: "printed: 24,000 plants, April 20 to May 5",
  },
  compute: (values) =>
    standYieldOf({
      crop: values.crop,
      plantedOn: values.plantingDate,
      standPerAc: values.stand,
      guide: values.guide,
      uneven: values.unevenLoss,
      hybrid: values.hybrid,
      rowWidthIn: values.rowWidth,
    }),
  value: (result) => result.yieldPct,
  working: (result) => [
    line("Table", result.guideTitle),
    line("An even stand", result.evenPct, "%"),
    line("Taken off for unevenness", result.unevenLossPct, "%"),
    line("Share of full yield", result.yieldPct, "%"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
  everyRow: everyStandRow,
});
