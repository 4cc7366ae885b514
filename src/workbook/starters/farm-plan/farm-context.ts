import { limeMethodWords } from "../../../functions/words";
import { limeMethods } from "../../../reference/soil";
import { demoFields, type FieldExample } from "../../scenario/windmill-hollow";
import type { CropChoice, StarterChoices } from "../choices";

/** What the sheets of a farm plan are made from. */
export interface FarmContext {
  readonly farmName: string;
  readonly guide: string;
  /** Region whose lime table goes with the guide. */
  readonly limeMethod: string;
  readonly crops: readonly CropChoice[];
  /** Rows of every field table. */
  readonly rows: number;
  /** The invented fields that fill the first rows; none in an empty plan. */
  readonly fields: readonly FieldExample[];
  readonly withDemo: boolean;
}

export function farmContext(choices: StarterChoices): FarmContext {
  return {
    farmName: choices.farmName,
    guide: choices.guide,
    limeMethod: limeMethodFor(choices.guide),
    crops: choices.crops,
    rows: choices.numberOfFields,
    fields: choices.withDemo ? demoFields.slice(0, choices.numberOfFields) : [],
    withDemo: choices.withDemo,
  };
}

/** The lime table of the guide's own region where there is one; the person can choose another on the sheet. */
function limeMethodFor(guide: string): string {
  return limeMethods[limeMethodWords.find(guide) ?? "inMiOh"].label;
}
