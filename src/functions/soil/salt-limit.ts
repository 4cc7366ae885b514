import { limits } from "../../core/limits";
import { saltLimit as saltLimitOf } from "../../core/soil/salt-limit";
import { saltGuides } from "../../reference/soil";
import { choice, line, optional, quantity, vocabulary, worksheetFunction, type WorkingLine } from "../frame";
import { cropWords, saltGuideWords, saltPlacementWords, textureWords } from "../words";
import { checkLines } from "../check-lines";
import { seedTouch, treatedSeed } from "../cautions";

const moistureWords = vocabulary("soil moisture", {
  moist: { label: "moist", also: ["wet", "good"] },
  dry: { label: "dry", also: ["droughty"] },
});

export const saltLimit = worksheetFunction({
  name: "SALTLIMIT",
  family: "soil",
  summary: "Most nitrogen plus potash that is safe with or near the seed.",
  asks: [
    "how much starter is safe",
    "pop-up fertilizer limit",
    "fertilizer with the seed",
    "nitrogen plus potash in the row",
  ],
  args: {
    crop: choice(cropWords, { says: "crop to be planted" }),
    rowWidth: quantity(limits.rowWidth, { says: "row width" }),
    placement: choice(saltPlacementWords, { says: "in furrow, or a band 2 in beside and 2 in below the seed" }),
    soil: optional(
      choice(textureWords, { says: "sandy, medium or fine surface soil" }),
      null,
      "the lowest figure printed",
    ),
    moisture: optional(
      choice(moistureWords, { says: "moist or dry at planting; dry soil halves the limit" }),
      "moist",
      "moist",
    ),
    guide: optional(
      choice(saltGuideWords, { says: "whose table" }),
      null,
      "the furrow by Kansas, bands by Michigan, seeds that take none by most guides",
    ),
    cec: optional(
      quantity(limits.cec, { says: "cation exchange capacity, for IN-MI-OH 1995" }),
      null,
      "waited for there",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "most pounds of N + K2O per acre" },
  sources: ["ksu-starter", "msu-bands-2009", "msu-e2567-1995", "ksu-mf2586", "umn-dry-soil-2013"],
  cautions: [seedTouch, treatedSeed],
  example: {
    call: ["corn", 30, "in furrow", "medium"],
    gives: 8,
    because: "printed: 30-inch rows, medium to fine soil, 8 lb",
  },
  compute: ({ crop, rowWidth, placement, soil, moisture, guide, cec }) =>
    saltLimitOf({ crop, rowWidthIn: rowWidth, placement, soil, isDry: moisture === "dry", guide, cecMeq: cec }),
  value: (result) => result.limitLbPerAc,
  working: (result) => [
    line("Table", saltGuides[result.guide].label),
    line("Most N + K2O", result.limitLbPerAc, "lb/ac"),
    line("In 1,000 feet of row", result.poundPerRowFoot * 1000, "lb"),
    ...aloneLines(result.band, result.isDry ? "before halving" : "moist soil"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

function aloneLines(band: ReturnType<typeof saltLimitOf>["band"], when: string): WorkingLine[] {
  if (band === null) return [];
  return [
    ...(band.n === undefined ? [] : [line(`Most N, ${when}`, band.n, "lb/ac")]),
    ...(band.p2o5 === undefined ? [] : [line(`Most P2O5, ${when}`, band.p2o5, "lb/ac")]),
    ...(band.k2o === undefined ? [] : [line(`Most K2O, ${when}`, band.k2o, "lb/ac")]),
  ];
}
