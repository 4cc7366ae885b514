import { mixUnits, type MixUnitKey } from "../../core/protection/tank-plan";
import { solutions, type SolutionKey } from "../../reference/protection/solutions";
import { vocabulary } from "../frame";

/** The closed word lists of crop protection. */
export const solutionWords = vocabulary<SolutionKey>("solution", solutions);
export const mixUnitWords = vocabulary<MixUnitKey>("mix unit", mixUnits);
export const productFormWords = vocabulary("product form", {
  liquid: { label: "liquid", also: ["lb/gal", "fluid"] },
  dry: { label: "dry", also: ["granule", "powder"] },
});
