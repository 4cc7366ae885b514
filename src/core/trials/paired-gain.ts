import { refuse, refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import { sameLength } from "../same-length";
import { tForConfidence, twoSidedChance } from "../statistics/student-t";
import { mean, sampleSd, sum } from "../statistics/sums";
import type { MeasuredGain } from "./gain-in-words";
import { trialLimits } from "./trial-limits";
import { smallestGainSeen } from "./smallest-gain";

export interface PairedInput {
  /** Yields of the untreated strips, pair by pair; null where one was lost. */
  readonly check: readonly (number | null)[];
  readonly treated: readonly (number | null)[];
  readonly confidencePct: number;
}

export interface PairedGain extends MeasuredGain {
  readonly pairs: number;
  readonly checkMean: number;
  readonly treatedMean: number;
  /** Standard deviation of the differences. */
  readonly differenceSd: number;
  readonly t: number;
  /** Chance of a gain at least this far from 0 if the practice did nothing: by t, and by flipping signs. */
  readonly chance: number;
  /** null with more than twelve pairs. */
  readonly flipChance: number | null;
  /** The gain that this trial would have seen eight times in ten. */
  readonly smallestSeen: number;
}

/**
 * Gain of treated over untreated strips, side by side in pairs.
 *
 *   mean difference ± t · SD / √pairs
 *
 * @source student-1908
 */
export function pairedGain({ check, treated, confidencePct }: PairedInput): PairedGain {
  within("confidence", confidencePct, trialLimits.confidence);
  const pairs = completePairs(check, treated);
  const differences = pairs.map(([untreated, with_]) => with_ - untreated);
  const gain = mean(differences);
  const df = differences.length - 1;
  const differenceSd = sampleSd(differences);
  if (!(differenceSd > 1e-9)) refuseNoSpread();
  const standardError = differenceSd / Math.sqrt(differences.length);
  const reach = tForConfidence(confidencePct, df) * standardError;
  const t = gain / standardError;
  return {
    gain,
    standardError,
    df,
    low: gain - reach,
    high: gain + reach,
    pairs: differences.length,
    checkMean: mean(pairs.map(([untreated]) => untreated)),
    treatedMean: mean(pairs.map(([, with_]) => with_)),
    differenceSd,
    t,
    chance: twoSidedChance(t, df),
    flipChance: differences.length <= 12 ? flipChance(differences) : null,
    smallestSeen: smallestGainSeen(standardError, df, confidencePct),
  };
}

function completePairs(check: PairedInput["check"], treated: PairedInput["treated"]): [number, number][] {
  sameLength("check", check, "treated", treated, "strip");
  const pairs = check.flatMap((untreated, index): [number, number][] => {
    const with_ = treated[index] ?? null;
    return untreated === null || with_ === null ? [] : [[untreated, with_]];
  });
  if (pairs.length === 0) waitFor(check.every((cell) => cell === null) ? "check" : "treated");
  if (pairs.length === 1) refuseOnePair();
  return pairs;
}

/** Share of all ways to swap the two strips inside pairs that give a mean at least as far from 0. */
function flipChance(differences: readonly number[]): number {
  const ways = 2 ** differences.length;
  const seen = Math.abs(sum(differences)) * (1 - 1e-12);
  let asFar = 0;
  for (let way = 0; way < ways; way++) {
    const flipped = differences.reduce(
      (total, difference, index) => total + (way & (1 << index) ? difference : -difference),
      0,
    );
    if (Math.abs(flipped) >= seen) asFar++;
  }
  return asFar / ways;
}

function refuseOnePair(): never {
  refuseArgument(
    "treated",
    "one pair of strips shows no difference between ground and treatment; two pairs are the least, four to six usual.",
  );
}

function refuseNoSpread(): never {
  refuse({
    kind: "noSolution",
    because: "Every pair differs by the same amount, so there is no spread to judge the gain by: check the yields.",
  });
}
