import { coverLimits } from "../../core/cover/cover-limits";
import type { CoverPass, StartCover } from "../../core/cover/cover-left";
import type { EngineLoad } from "../../core/machinery/fuel-use";
import { machineryLimits } from "../../core/machinery/machinery-limits";
import type { CropKey } from "../../reference/crops";
import { choice, optional, percent, type OneArgument } from "../frame";
import { parseNumber } from "../frame/parse-number";
import { orWord } from "../number-or-word";
import { cropWords } from "../words";
import { coverPassWords, loadWords, residueKindWords } from "./cover-words";

const kept = percent(coverLimits.kept, { says: "percent of the cover that the pass keeps" });
const named = choice(coverPassWords, { says: "name of a pass" });

/** A pass by its published name, or the share of cover it is known to keep. */
export const coverPass: OneArgument<CoverPass> = {
  ...named,
  says: "a pass or winter by name, or the percent of cover that it keeps",
  read(cell, argument) {
    const isNumber = typeof cell === "number" || (typeof cell === "string" && parseNumber(cell) !== undefined);
    return isNumber ? { keptPct: kept.read(cell, argument) } : { pass: named.read(cell, argument) };
  },
};

export const startCover: OneArgument<StartCover> = orWord<CropKey, StartCover>(
  percent(coverLimits.cover, {
    says: "ground covered before the first pass, or the crop whose usual cover after harvest it is",
  }),
  cropWords,
  { ofNumber: (coverPct) => ({ coverPct }), ofWord: (crop) => ({ crop }) },
);

export const residueKind = optional(
  choice(residueKindWords, {
    says: "fragile (soybean, bean, pea, sunflower, canola) or non-fragile (corn, sorghum, small grain); wheat under 45 bu/ac is fragile",
  }),
  null,
  "that of the crop named as startCover; needed where startCover is a number",
);

export function engineLoad(says: string): OneArgument<EngineLoad> {
  return orWord<"average", EngineLoad>(percent(machineryLimits.load, { says }), loadWords, {
    ofNumber: (loadPct) => ({ loadPct }),
    ofWord: (word) => word,
  });
}
