import { refuseArgument } from "../fault";
import { within } from "../limit";
import { seededRandom } from "../statistics/seeded-random";
import { trialLimits, wholeNumber } from "./trial-limits";

export type TrialDesign = "blocks" | "pairs" | "splitPlanter";

export interface TrialLayoutInput {
  readonly treatments: readonly string[];
  readonly blocks: number;
  readonly seed: number;
  readonly design: TrialDesign;
}

/** One strip, in the order met when walking across the field. */
export interface LayoutStrip {
  readonly strip: number;
  readonly block: number;
  readonly treatment: string;
}

/**
 * A fair order of strips. In blocks and pairs the order is drawn anew in every block, and the whole draw is repeated
 * while all blocks came out alike, which favours no treatment. A split planter cannot change sides: one draw decides
 * which half carries which treatment, and turning at the ends gives A B, B A, A B across the field.
 */
export function trialLayout({ treatments, blocks, seed, design }: TrialLayoutInput): LayoutStrip[] {
  within("blocks", blocks, trialLimits.layoutBlocks);
  wholeNumber("blocks", blocks);
  within("seed", seed, trialLimits.seed);
  wholeNumber("seed", seed);
  checkTreatments(treatments, design);

  const random = seededRandom(seed);
  const orders = design === "splitPlanter" ? turning(random.shuffled(treatments), blocks) : drawn();
  return orders.flatMap((order, block) =>
    order.map((treatment, place) => ({ strip: block * order.length + place + 1, block: block + 1, treatment })),
  );

  function drawn(): string[][] {
    let draw: string[][];
    do draw = Array.from({ length: blocks }, () => random.shuffled(treatments));
    while (draw.every((order) => order.every((treatment, place) => treatment === draw[0]?.[place])));
    return draw;
  }
}

function turning(firstPass: readonly string[], passes: number): string[][] {
  return Array.from({ length: passes }, (_, pass) => (pass % 2 === 0 ? [...firstPass] : [...firstPass].reverse()));
}

function checkTreatments(treatments: readonly string[], design: TrialDesign): void {
  const most = design === "blocks" ? trialLimits.treatments.max : 2;
  const twice = treatments.find((treatment, index) => treatments.indexOf(treatment) !== index);
  if (twice !== undefined) refuseTreatments(`"${twice}" is named twice; name each treatment once.`);
  if (treatments.length < 2) refuseTreatments("name at least two, the untreated check among them.");
  if (treatments.length <= most) return;
  refuseTreatments(
    design === "blocks"
      ? `at most ${most}; got ${treatments.length}.`
      : `pairs and a split planter take two; got ${treatments.length}. Use blocks for more.`,
  );
}

function refuseTreatments(because: string): never {
  refuseArgument("treatments", because);
}
