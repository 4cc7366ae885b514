import { cornLeaves as cornLeavesOf, stageHeat as stageHeatOf } from "../../core/seed/corn-stage";
import { heatLimits } from "../../core/seed/heat-limits";
import { maturityMargin as marginOf, maturityNeed as needOf, type MaturityNeed } from "../../core/seed/maturity-margin";
import { cornEmergence, lateHybrid, leafPaces } from "../../reference/seed/corn-heat";
import type { Cited } from "../../reference/table";
import { sheetDate } from "../sheet-date";
import { choice, line, optional, quantity, vocabulary, worksheetFunction, type WorkingLine } from "../frame";
import { checkLines } from "../check-lines";
import { leafGuideWords } from "./seed-words";

const leafGuide = optional(
  choice(leafGuideWords, { says: "whose pace: Purdue 82 and 50 heat units a leaf, Iowa 84 and 56" }),
  "purdue",
  "Purdue",
);

/** The paces of one guide, by its label, with what all of them share. */
function paceRows(guide: string | null): readonly Cited[] {
  const key = guide === null ? null : leafGuideWords.find(guide);
  const rows = leafPaces.filter((row) => key === null || row.key === key);
  return rows.length > 0 ? [cornEmergence, ...rows] : [];
}

export const stageHeat = worksheetFunction({
  name: "STAGEHEAT",
  family: "seed",
  summary: "Heat units from planting to a leaf stage of corn; stage 0 is emergence.",
  asks: ["heat units to V6", "GDD to emergence", "when will corn reach V10"],
  args: {
    stage: quantity(heatLimits.leaf, { says: "leaves with a collar: 6 for V6, 0 for emergence" }),
    guide: leafGuide,
  },
  returns: { shape: "one", unit: "heat units", says: "from planting" },
  sources: ["umn-coulter-2021", "purdue-corn-leaves", "isu-pmr-1009"],
  example: { call: [6], gives: 607, because: "by hand: 115 + 6 × 82" },
  compute: ({ stage, guide }) => stageHeatOf({ leaf: stage, guide }),
  value: (result) => result.heatUnits,
  working: (result) => [
    line("To emergence", cornEmergence.heatUnits, "heat units"),
    line("To the stage", result.heatUnits, "heat units"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
  everyRow: paceRows,
});

export const stageLeaves = worksheetFunction({
  name: "STAGELEAVES",
  family: "seed",
  summary: "Leaf stage that corn has reached after so many heat units from planting.",
  asks: ["what stage is my corn", "how many leaves by now", "V stage from GDD"],
  args: {
    heatUnits: quantity(heatLimits.heatUnits, { says: "heat units since planting; HEATUNITS gives them" }),
    guide: leafGuide,
  },
  returns: { shape: "one", unit: "", says: "not emerged, VE, V1 and so on" },
  sources: ["umn-coulter-2021", "purdue-corn-leaves", "isu-pmr-1009"],
  example: { call: [620], gives: "V6", because: "by hand: V6 at 115 + 6 × 82 = 607, V7 at 689" },
  compute: ({ heatUnits, guide }) => cornLeavesOf({ heatUnits, guide }),
  value: ({ leaves }) => (leaves === null ? "not emerged" : leaves === 0 ? "VE" : `V${leaves}`),
  working: (result) => [
    line("Leaves with a collar", result.leaves ?? "not emerged"),
    line("To the next stage", result.toNextLeaf, "heat units"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
  everyRow: paceRows,
});

const ratedFromWords = vocabulary<"planting" | "emergence">("rated from", {
  planting: { label: "planting", also: ["from planting"] },
  emergence: { label: "emergence", also: ["from emergence"] },
});

const hybridArguments = {
  hybridNeed: quantity(heatLimits.hybridNeed, { says: "hybrid's rating to black layer" }),
  plantingDate: optional(sheetDate({ says: "day it is planted; the year does not matter" }), null, "May 1 or before"),
  ratedFrom: optional(
    choice(ratedFromWords, { says: "rated from planting, or from emergence" }),
    "planting",
    "planting",
  ),
};

export const maturityNeed = worksheetFunction({
  name: "MATURITYNEED",
  family: "seed",
  summary: "Heat units a corn hybrid needs to black layer when planted late.",
  asks: ["hybrid heat units when planted late", "GDD to black layer"],
  args: hybridArguments,
  returns: { shape: "one", unit: "heat units", says: "from planting to black layer" },
  sources: ["nielsen-2002"],
  example: { call: [2700, "2026-05-31"], gives: 2496, because: "printed: 2,496; by hand 2,700 − 30 × 6.8" },
  compute: ({ hybridNeed, plantingDate, ratedFrom }) =>
    needOf({ rating: hybridNeed, plantedOn: plantingDate, ratedFrom }),
  value: (result) => result.heatUnits,
  working: needLines,
  cites: (result) => result.cited,
  everyRow: () => [lateHybrid, cornEmergence],
});

export const maturityMargin = worksheetFunction({
  name: "MATURITYMARGIN",
  family: "seed",
  summary: "Heat units to spare when a corn hybrid reaches black layer before the freeze; below 0 it does not.",
  asks: ["will corn mature before frost", "which hybrid maturity for late planting", "heat units before frost"],
  args: {
    heatUnitsLeft: quantity(heatLimits.heatUnits, {
      says: "normal heat units from planting to the freeze you plan for",
    }),
    ...hybridArguments,
  },
  returns: { shape: "one", unit: "heat units", says: "to spare at the freeze" },
  sources: ["nielsen-2002"],
  example: {
    call: [2550, 2700, "2026-05-31"],
    gives: 54,
    because: "by hand: 2,700 − 30 × 6.8 = 2,496; 2,550 − 2,496",
  },
  compute: ({ heatUnitsLeft, hybridNeed, plantingDate, ratedFrom }) =>
    marginOf({ heatUnitsLeft, rating: hybridNeed, plantedOn: plantingDate, ratedFrom }),
  value: (result) => result.margin,
  working: (result) => [
    ...needLines(result.need),
    line("To spare", result.margin, "heat units"),
    line("Verdict", result.margin >= 0 ? "black layer before the freeze" : "the freeze comes first"),
    line("Mind", "a freeze date of one year in two leaves even odds; one in ten is safer"),
  ],
  cites: (result) => result.need.cited,
  everyRow: () => [lateHybrid, cornEmergence],
});

function needLines(need: MaturityNeed): WorkingLine[] {
  return [
    line("Days after May 1", need.daysLate, "days"),
    line("Fewer heat units for that", need.savedByLateness, "heat units"),
    line("Added, rated from emergence", need.addedForEmergence, "heat units"),
    line("Needed from planting to black layer", need.heatUnits, "heat units"),
    ...checkLines(need.cited),
  ];
}
