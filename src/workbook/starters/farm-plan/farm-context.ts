import { demoFields, type FieldExample } from "../../scenario/windmill-hollow";
import type { CropChoice, StarterChoices } from "../choices";

/** What the sheets of a farm plan are made from. */
export interface FarmContext {
  readonly farmName: string;
  readonly guide: string;
  readonly crops: readonly CropChoice[];
  /** Rows of every field table. */
  readonly rows: number;
  /** The invented fields that fill the first rows; none in an empty plan. */
  readonly fields: readonly FieldExample[];
}

export function farmContext(choices: StarterChoices): FarmContext {
  return {
    farmName: choices.farmName,
    guide: choices.guide,
    crops: choices.crops,
    rows: choices.numberOfFields,
    fields: choices.withDemo ? demoFields.slice(0, choices.numberOfFields) : [],
  };
}
