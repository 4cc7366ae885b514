import { populationCurveWords as curves, type PopulationCurveKey } from "../../reference/seed/population-curves";
import { spacingLossWords as losses, type SpacingLossKey } from "../../reference/seed/spacing-loss";
import { vocabulary } from "../frame";

/** Words that only the functions of this family take. */
export const spacingLossWords = vocabulary<SpacingLossKey>("spacing loss", losses);
export const populationCurveWords = vocabulary<PopulationCurveKey>("population curve", curves);
