import { refuse, refuseArgument } from "../fault";
import { within } from "../limit";
import { fQuantile } from "../statistics/f-distribution";
import { noncentralFCdf } from "../statistics/noncentral-f";
import { noncentralTCdf } from "../statistics/noncentral-t";
import { tForConfidence } from "../statistics/student-t";
import { trialLimits, wholeNumber } from "./trial-limits";

export interface TrialPlan {
  readonly gainBuPerAc: number;
  /** Strip-to-strip standard deviation inside a block. */
  readonly stripSdBuPerAc: number;
  readonly confidencePct: number;
  readonly treatments: number;
}

export interface TrialPower {
  readonly powerPct: number;
  readonly errorDf: number;
  /** Standard error of the difference of two treatment means. */
  readonly differenceErrorBuPerAc: number;
}

/** Gains of so many standard deviations need no trial; beyond it a unit is wrong. */
const largestRatio = 50;

/**
 * Chance that a trial of b blocks shows a true gain as significant. Two treatments: two-sided paired t with the
 * noncentral t. More: the F test of randomized blocks with the noncentral F, for the case that is hardest to see: two
 * treatments the gain apart and all others halfway between.
 *
 *   t: noncentrality gain·√b / (√2·SD), b − 1 df      F: b·gain² / (2·SD²), t − 1 and (t − 1)(b − 1) df
 */
export function trialPower(plan: TrialPlan, blocks: number): TrialPower {
  checkPlan(plan);
  within("blocks", blocks, trialLimits.blocks);
  wholeNumber("blocks", blocks);
  return powerOf(plan, blocks);
}

/** The least number of blocks whose chance reaches the wanted one, by the exact distributions. */
export function trialSize(plan: TrialPlan, powerPct: number): TrialPower & { readonly blocks: number } {
  checkPlan(plan);
  within("power", powerPct, trialLimits.power);
  let high = 2;
  while (powerOf(plan, high).powerPct < powerPct) {
    if (high >= trialLimits.blocks.max) refuseEndless();
    high = Math.min(2 * high, trialLimits.blocks.max);
  }
  let low = 1;
  // More blocks always see more, so halving finds the first that is enough.
  while (high - low > 1 && high > 2) {
    const middle = Math.floor((low + high) / 2);
    if (middle >= 2 && powerOf(plan, middle).powerPct >= powerPct) high = middle;
    else low = middle;
  }
  return { blocks: high, ...powerOf(plan, high) };
}

function powerOf(plan: TrialPlan, blocks: number): TrialPower {
  const { gainBuPerAc, stripSdBuPerAc, confidencePct, treatments } = plan;
  const errorDf = (treatments - 1) * (blocks - 1);
  const differenceErrorBuPerAc = stripSdBuPerAc * Math.sqrt(2 / blocks);
  const shift = gainBuPerAc / differenceErrorBuPerAc;
  const seen =
    treatments === 2
      ? pairPower(shift, errorDf, confidencePct)
      : blockPower(shift * shift, treatments - 1, errorDf, confidencePct);
  return { powerPct: 100 * seen, errorDf, differenceErrorBuPerAc };
}

/** Chance that a two-sided t test sees a shift of so many standard errors. */
export function pairPower(shift: number, df: number, confidencePct: number): number {
  const critical = tForConfidence(confidencePct, df);
  return 1 - noncentralTCdf(critical, df, shift) + noncentralTCdf(-critical, df, shift);
}

/** Chance that the F test of treatments sees them. */
export function blockPower(noncentrality: number, treatmentDf: number, errorDf: number, confidencePct: number): number {
  return 1 - noncentralFCdf(fQuantile(confidencePct / 100, treatmentDf, errorDf), treatmentDf, errorDf, noncentrality);
}

function checkPlan({ gainBuPerAc, stripSdBuPerAc, confidencePct, treatments }: TrialPlan): void {
  within("gainToSee", gainBuPerAc, trialLimits.gainToSee);
  within("stripSD", stripSdBuPerAc, trialLimits.stripSd);
  within("confidence", confidencePct, trialLimits.confidence);
  within("treatments", treatments, trialLimits.treatments);
  wholeNumber("treatments", treatments);
  if (gainBuPerAc <= largestRatio * stripSdBuPerAc) return;
  refuseArgument(
    "stripSD",
    `${stripSdBuPerAc} bu/ac is tiny beside a gain of ${gainBuPerAc} bu/ac; check that both are in bu/ac.`,
  );
}

function refuseEndless(): never {
  refuse({
    kind: "noSolution",
    because: `More than ${trialLimits.blocks.max} blocks would be needed: the gain is too small against the differences between strips.`,
  });
}
