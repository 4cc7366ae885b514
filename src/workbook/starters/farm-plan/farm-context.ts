import { runFunction } from "../../../functions/frame/run";
import { limeNeed } from "../../../functions/soil/lime-need";
import { finenessSystemWords, guideWords, limeMethodWords } from "../../../functions/words";
import { extractants, groups, guides, type Guide } from "../../../reference/guides";
import { finenessSystems, limeMethods } from "../../../reference/soil";
import { demoFields, type FieldExample } from "../../scenario/windmill-hollow";
import type { CropChoice, StarterChoices } from "../choices";
import type { FarmPart } from "../farm-parts";
import { soilGroupLabels } from "../word-lists";
import { nitrateGuides, sulfateGuides, zincTests } from "./fertility/guide-facts";

/** What the sheets of a farm plan are made from. */
export interface FarmContext {
  readonly farmName: string;
  readonly guide: string;
  /** Extractions to start with, where the guide leaves the choice and the invented farm's tests settle it. */
  readonly methods: Readonly<Record<"P2O5" | "K2O", string | null>>;
  /** The same for zinc; null where there is no test yet. */
  readonly zincMethod: string | null;
  /** Whether the guide reads nitrate or sulfate of a deep sample. */
  readonly readsProfile: boolean;
  /** Extractions of the tests that the guides are compared on. */
  readonly comparedMethods: Readonly<Record<"P2O5" | "K2O", string | null>>;
  /** Soil groups and regions to choose from. */
  readonly groups: readonly string[];
  /** Unit of the soil tests; null where the guide is read at an index or a class of its own. */
  readonly testUnit: "ppm" | null;
  /** What goes with the guide when lime is worked out. */
  readonly lime: {
    readonly method: string;
    readonly targetPh: number;
    readonly system: string;
    /** Whether that measure has moisture taken off already. */
    readonly countsMoisture: boolean;
    /** Only where the table leaves the depth open. */
    readonly depthIn: number | null;
    /** Meshes per inch, coarse to fine. */
    readonly sieves: readonly number[];
  };
  readonly crops: readonly CropChoice[];
  /** Rows of every field table. */
  readonly rows: number;
  /** The invented fields that fill the first rows; none in an empty plan. */
  readonly fields: readonly FieldExample[];
  readonly withDemo: boolean;
  /** Sheets wanted beyond the ones every plan has. */
  readonly parts: readonly FarmPart[];
}

export function farmContext(choices: StarterChoices): FarmContext {
  const guide: Guide = guides[guideWords.find(choices.guide) ?? "IN-MI-OH"];
  return {
    farmName: choices.farmName,
    guide: guide.label,
    methods: { P2O5: methodFor(guide.P2O5, choices), K2O: methodFor(guide.K2O, choices) },
    zincMethod: choices.withDemo ? zincMethodFor(guide.label) : null,
    readsProfile: [...nitrateGuides, ...sulfateGuides].includes(guide.label),
    comparedMethods: { P2O5: comparedMethod(guide.P2O5, choices), K2O: comparedMethod(guide.K2O, choices) },
    groups: groupsOf(guide),
    testUnit: [guide.P2O5, guide.K2O].some(({ testUnit }) => testUnit === "index" || testUnit === "class")
      ? null
      : "ppm",
    lime: limeFor(guide.label),
    crops: choices.crops,
    rows: choices.numberOfFields,
    fields: choices.withDemo ? demoFieldsFor(choices) : [],
    withDemo: choices.withDemo,
    parts: choices.parts,
  };
}

/** The invented farm's tests are Mehlich-3. */
function methodFor({ extractants: known }: Guide["P2O5"], { withDemo }: StarterChoices): string | null {
  const key = known.find((each) => each === "mehlich3") ?? known.find((each) => each.startsWith("mehlich3"));
  return withDemo && known.length > 1 && key !== undefined ? extractants[key].label : null;
}

/** The extraction that the guide reads the invented tests as. */
function comparedMethod(system: Guide["P2O5"], choices: StarterChoices): string | null {
  if (!choices.withDemo) return null;
  const [only, another] = system.extractants;
  const own = only !== undefined && another === undefined ? extractants[only].label : null;
  return methodFor(system, choices) ?? own ?? extractants.mehlich3.label;
}

function zincMethodFor(guide: string): string {
  return zincTests.find(([label]) => label === guide)?.[1] ?? extractants.mehlich3.label;
}

/** Soil groups by name, or the numbered equations of the one guide that has those. */
function groupsOf({ P2O5, K2O }: Guide): readonly string[] {
  const own = [...P2O5.rules, ...K2O.rules].flatMap(({ group }) => {
    const label = group === undefined ? undefined : groups[group]?.label;
    return label === undefined ? [] : [label];
  });
  return own.some((label) => label.startsWith("equation")) ? [...new Set(own)] : soilGroupLabels;
}

/** The invented fields that grow nothing but the crops chosen. */
function demoFieldsFor({ crops, numberOfFields }: StarterChoices): readonly FieldExample[] {
  const isChosen = (name: string) => crops.some(({ crop }) => crop === name);
  return demoFields
    .filter(({ lastCrop, nextCrop }) => isChosen(lastCrop) && isChosen(nextCrop))
    .slice(0, numberOfFields);
}

/** The lime table and the measure of lime quality of the guide's own region; both can be changed on the sheet. */
export function limeFor(guide: string): FarmContext["lime"] {
  const { label: method, depthIn } = limeMethods[limeMethodWords.find(guide) ?? "inMiOh"];
  const { label: system, sieves, countsMoisture } = finenessSystems[finenessSystemWords.find(guide) ?? "oh"];
  const depth = depthIn === null ? usualDepthIn : null;
  return { method, targetPh: targetPhOf(method, depth), system, sieves, countsMoisture, depthIn: depth };
}

/** Plough layer, where a lime table leaves the depth open. */
const usualDepthIn = 7;

/** The first of the usual targets that this region's table is printed for, found by asking it about an acid soil. */
function targetPhOf(method: string, depthIn: number | null): number {
  const isPrinted = (targetPh: number) =>
    typeof runFunction(limeNeed, [5.4, 6.4, targetPh, method, depthIn])[0]?.[0] === "number";
  return [6.5, 6, 6.8, 7].find(isPrinted) ?? 6.5;
}
