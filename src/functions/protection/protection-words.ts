import { mixUnits, type MixUnitKey } from "../../core/protection/tank-plan";
import { herbicides, type HerbicideKey } from "../../reference/protection/herbicides";
import {
  countings,
  pests,
  pestStages,
  type CountingKey,
  type PestKey,
  type PestStageKey,
} from "../../reference/protection/pests";
import { weedCurves, type WeedCurveKey } from "../../reference/protection/weeds";
import { solutions, type SolutionKey } from "../../reference/protection/solutions";
import { vocabulary } from "../frame";
import { yesNoWords } from "../yes-no";

/** The closed word lists of crop protection. */
export const solutionWords = vocabulary<SolutionKey>("solution", solutions);
export const mixUnitWords = vocabulary<MixUnitKey>("mix unit", mixUnits);
export const productFormWords = vocabulary("product form", {
  liquid: { label: "liquid", also: ["lb/gal", "fluid"] },
  dry: { label: "dry", also: ["granule", "powder"] },
});

export const herbicideWords = vocabulary<HerbicideKey>("active ingredient", herbicides);
export const controlWords = yesNoWords("control", {
  yes: ["effective", "controls"],
  no: ["not effective", "resistant", "weak"],
});
export const riskWords = vocabulary("risk", {
  low: { label: "low", also: [] },
  moderate: { label: "moderate", also: ["medium"] },
  high: { label: "high", also: [] },
});

export const pestWords = vocabulary<PestKey>("pest", pests);
export const countingWords = vocabulary<CountingKey>("way of counting", countings);
export const pestStageWords = vocabulary<PestStageKey>("pest stage", pestStages);
export const weedCurveWords = vocabulary<WeedCurveKey>("weed curve", weedCurves);
