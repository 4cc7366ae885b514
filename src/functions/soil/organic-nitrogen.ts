import { nitrogenLimits } from "../../core/nitrogen/nitrogen-limits";
import { organicNitrogen as organicNitrogenOf } from "../../core/nitrogen/organic-nitrogen";
import { choice, line, percent, worksheetFunction } from "../frame";
import { releaseWords } from "../words";
import { checkLines } from "../check-lines";

export const organicNitrogen = worksheetFunction({
  name: "ORGANICNITROGEN",
  family: "soil",
  summary: "Pounds of nitrogen that soil organic matter sets free in a season.",
  asks: ["nitrogen from organic matter", "how much nitrogen does my soil release"],
  args: {
    organicMatter: percent(nitrogenLimits.organicMatter, { says: "soil organic matter", smallIsUsual: true }),
    region: choice(releaseWords, { says: "region and crop whose figure to use" }),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of nitrogen released per acre" },
  sources: ["organic-release-rule", "ksu-mf2586", "ksu-organic-matter-2022", "canola-watch-2016"],
  cautions: [
    "Do not take it off a rate from NITROGENNEED: the Nebraska and Kansas equations hold it already, and the others are calibrated with it in the soil.",
    "Cool, wet or dry springs release far less: read the range.",
  ],
  example: { call: [5, "western Canada"], gives: 56, because: "printed: 5 % × 14 lb × 0.80" },
  compute: ({ organicMatter, region }) => organicNitrogenOf(organicMatter, region),
  value: (result) => result.releasedLbPerAc,
  working: (result) => [
    line("Released per 1 % of organic matter", result.row.lbPerPct, "lb/ac"),
    line("Lowest", result.lowLbPerAc, "lb/ac"),
    line("Highest", result.highLbPerAc, "lb/ac"),
    ...checkLines([result.row]),
  ],
  cites: (result) => [result.row],
});
