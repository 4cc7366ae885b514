import { refuse, waitFor } from "../fault";
import { within } from "../limit";
import { zForConfidence } from "../statistics/normal";
import { studentTCdf, tForConfidence } from "../statistics/student-t";
import { wholeUp } from "../units/whole-up";
import { sampleSd } from "../statistics/sums";
import { seedLimits } from "./seed-limits";
import { standCount, type StandCountInput } from "./stand-count";

export interface StandRangeInput extends StandCountInput {
  readonly confidencePct: number;
  /** How near to the true stand the mean shall come, % of it. */
  readonly withinPct: number;
}

export interface StandRange {
  /** No lower than 0. */
  readonly lowPerAc: number;
  readonly meanPerAc: number;
  readonly highPerAc: number;
  readonly halfWidthPerAc: number;
  readonly sdPerAc: number;
  readonly counts: number;
  readonly tValue: number;
  /** null: no plants were counted. */
  readonly variationPct: number | null;
  readonly countsNeeded: number | null;
  readonly moreCounts: number | null;
}

/**
 * How sure a counted stand is, and how many counts would make it surer.
 *
 *   mean ± t × s / √n          s the sample deviation, t of n − 1 degrees of freedom
 *   counts needed: the fewest n with n ≥ (t × CV / within)², t of n − 1 degrees of freedom
 *
 * @source student-t-interval
 */
export function standRange({ confidencePct, withinPct, ...counted }: StandRangeInput): StandRange {
  within("confidence", confidencePct, seedLimits.confidence);
  within("within", withinPct, seedLimits.countsWithin);
  const { counts } = counted;
  if (counts.length === 0) waitFor("counts");
  if (counts.length < 2) refuse({ kind: "tooFew", argument: "counts", received: counts.length, atLeast: 2 });

  const stand = standCount(counted);
  const sdCount = sampleSd(counts);
  const tValue = tForConfidence(confidencePct, counts.length - 1);
  const halfWidthPerAc = ((tValue * sdCount) / Math.sqrt(counts.length)) * stand.plantsPerAcEach;
  const variationPct = stand.meanCount > 0 ? (100 * sdCount) / stand.meanCount : null;
  const countsNeeded = variationPct === null ? null : countsFor(variationPct, withinPct, confidencePct);
  return {
    lowPerAc: Math.max(0, stand.plantsPerAc - halfWidthPerAc),
    meanPerAc: stand.plantsPerAc,
    highPerAc: stand.plantsPerAc + halfWidthPerAc,
    halfWidthPerAc,
    sdPerAc: sdCount * stand.plantsPerAcEach,
    counts: counts.length,
    tValue,
    variationPct,
    countsNeeded,
    moreCounts: countsNeeded === null ? null : Math.max(0, countsNeeded - counts.length),
  };
}

/** The fewest counts whose interval, at this spread, is no wider than asked. */
function countsFor(variationPct: number, withinPct: number, confidencePct: number): number {
  if (variationPct === 0) return 2;
  const ratio = variationPct / withinPct;
  const chance = 0.5 + confidencePct / 200;
  // The normal value is the smallest any t comes to, so the search starts at or a few counts below the answer.
  let counts = Math.max(2, wholeUp((zForConfidence(confidencePct) * ratio) ** 2));
  // t × ratio ≤ √n, read as a chance: much quicker than t itself.
  while (studentTCdf(Math.sqrt(counts) / ratio, counts - 1) < chance) counts++;
  return counts;
}
