import { waitFor } from "../fault";
import { within } from "../limit";
import { sameLength } from "../same-length";
import { tForConfidence, twoSidedChance } from "../statistics/student-t";
import { dot } from "../statistics/sums";
import { contrastVariance, type BlockFit } from "./block-fit";
import { judgedFit } from "./block-trial";
import { namedStrips, type NamedStrips } from "./named-strips";
import { trialLimits } from "./trial-limits";

type Strips = readonly (number | null)[];

export interface AddUpInput {
  /** Yields block by block; null where a strip was lost. */
  readonly check: Strips;
  readonly a: Strips;
  readonly b: Strips;
  readonly both: Strips;
  readonly confidencePct: number;
}

export interface Contrast {
  readonly gain: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
  readonly chance: number;
}

export interface AddUp {
  readonly fit: BlockFit;
  readonly blocks: number;
  /** Gain of a over the check, of b over the check, and of both together. */
  readonly aAlone: Contrast;
  readonly bAlone: Contrast;
  readonly together: Contrast;
  /** What the pair brings beyond the sum of the separate gains. */
  readonly interaction: Contrast;
  readonly separateSum: number;
  readonly missing: NamedStrips["missing"];
}

const contrasts = {
  aAlone: [-1, 1, 0, 0],
  bAlone: [-1, 0, 1, 0],
  together: [-1, 0, 0, 1],
  interaction: [1, -1, -1, 1],
} as const;

/**
 * Whether the gains of two practices add up, from strips of neither, a, b and both in every block.
 *
 *   interaction = both − a − b + check, with standard error 2·√(error mean square / blocks)
 */
export function trialAddUp({ check, a, b, both, confidencePct }: AddUpInput): AddUp {
  within("confidence", confidencePct, trialLimits.confidence);
  sameLength("check", check, "a", a);
  sameLength("check", check, "b", b);
  sameLength("check", check, "both", both);
  const lists = { check, a, b, both };
  const rows = Object.entries(lists).flatMap(([treatment, strips]) =>
    strips.map((yieldBuPerAc, block) => ({ treatment, block: `block ${block + 1}`, yieldBuPerAc })),
  );
  for (const [name, strips] of Object.entries(lists)) waitForYields(name, strips);
  const named = namedStrips(
    {
      treatments: rows.map(({ treatment }) => treatment),
      blocks: rows.map(({ block }) => block),
      yields: rows.map(({ yieldBuPerAc }) => yieldBuPerAc),
    },
    { treatments: "check", blocks: "check" },
  );
  const fit = judgedFit(named, "check");
  const of = (weights: readonly number[]) => contrastOf(fit, weights, confidencePct);
  const [aAlone, bAlone] = [of(contrasts.aAlone), of(contrasts.bAlone)];
  return {
    fit,
    blocks: named.blocks.length,
    aAlone,
    bAlone,
    together: of(contrasts.together),
    interaction: of(contrasts.interaction),
    separateSum: aAlone.gain + bAlone.gain,
    missing: named.missing,
  };
}

function contrastOf(fit: BlockFit, weights: readonly number[], confidencePct: number): Contrast {
  const gain = dot(weights, fit.means);
  const standardError = Math.sqrt(contrastVariance(fit, weights));
  const reach = tForConfidence(confidencePct, fit.errorDf) * standardError;
  const chance = twoSidedChance(gain / standardError, fit.errorDf);
  return { gain, standardError, low: gain - reach, high: gain + reach, chance };
}

function waitForYields(argument: string, strips: Strips): void {
  if (strips.every((strip) => strip === null)) waitFor(argument);
}
