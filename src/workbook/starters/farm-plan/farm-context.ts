import { runFunction } from "../../../functions/frame/run";
import { limeNeed } from "../../../functions/soil";
import { finenessSystemWords, guideWords, limeMethodWords } from "../../../functions/words";
import { finenessSystems, limeMethods } from "../../../reference/soil";
import { demoFields, type FieldExample } from "../../scenario/windmill-hollow";
import type { CropChoice, StarterChoices } from "../choices";

/** What the sheets of a farm plan are made from. */
export interface FarmContext {
  readonly farmName: string;
  readonly guide: string;
  /** What goes with the guide when lime is worked out. */
  readonly lime: {
    readonly method: string;
    readonly targetPh: number;
    readonly system: string;
    /** Meshes per inch, coarse to fine. */
    readonly sieves: readonly number[];
  };
  readonly crops: readonly CropChoice[];
  /** Rows of every field table. */
  readonly rows: number;
  /** The invented fields that fill the first rows; none in an empty plan. */
  readonly fields: readonly FieldExample[];
  readonly withDemo: boolean;
}

export function farmContext(choices: StarterChoices): FarmContext {
  const guide = guideWords.find(choices.guide);
  return {
    farmName: choices.farmName,
    guide: guide === undefined ? choices.guide : guideWords.words[guide].label,
    lime: limeFor(choices.guide),
    crops: choices.crops,
    rows: choices.numberOfFields,
    fields: choices.withDemo ? demoFieldsFor(choices) : [],
    withDemo: choices.withDemo,
  };
}

/** The invented fields that grow nothing but the crops chosen. */
function demoFieldsFor({ crops, numberOfFields }: StarterChoices): readonly FieldExample[] {
  const isChosen = (name: string) => crops.some(({ crop }) => crop === name);
  return demoFields
    .filter(({ lastCrop, nextCrop }) => isChosen(lastCrop) && isChosen(nextCrop))
    .slice(0, numberOfFields);
}

/** The lime table and the measure of lime quality of the guide's own region; both can be changed on the sheet. */
function limeFor(guide: string): FarmContext["lime"] {
  const method = limeMethods[limeMethodWords.find(guide) ?? "inMiOh"].label;
  const system = finenessSystems[finenessSystemWords.find(guide) ?? "oh"];
  return { method, targetPh: targetPhOf(method), system: system.label, sieves: system.sieves };
}

/** The first of the usual targets that this region's table is printed for, found by asking it about an acid soil. */
function targetPhOf(method: string): number {
  const isPrinted = (targetPh: number) =>
    typeof runFunction(limeNeed, [5.4, 6.4, targetPh, method])[0]?.[0] === "number";
  return [6.5, 6, 6.8, 7].find(isPrinted) ?? 6.5;
}
