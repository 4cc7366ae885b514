import { refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import { sameLength } from "../same-length";
import { chiSquaredCdf } from "../statistics/chi-squared";
import { tForConfidence, twoSidedChance } from "../statistics/student-t";
import { dot, sum, sumOfSquares } from "../statistics/sums";
import { trialLimits } from "./trial-limits";

export interface TrialPoolInput {
  /** Gain of each field or year; null where the row is blank. */
  readonly gains: readonly (number | null)[];
  readonly standardErrors: readonly (number | null)[];
  readonly confidencePct: number;
}

export interface TrialPool {
  readonly fields: number;
  readonly gain: number;
  /** Knapp and Hartung's, never below the plain one. */
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
  /** Chance of a pooled gain this far from 0 if the practice did nothing. */
  readonly chance: number;
  /** Where the true gain of one more field is likely to lie; null with two fields. */
  readonly newField: { readonly low: number; readonly high: number } | null;
  /** Standard deviation of the true gain from field to field. */
  readonly betweenSd: number;
  readonly q: number;
  readonly qChance: number;
  /** Share of the differences between fields that is more than chance. */
  readonly realSharePct: number;
  /** Share of each field in the pooled gain, by row; null where the row is blank. */
  readonly weightsPct: readonly (number | null)[];
  /** The gain if all fields had the same true gain. */
  readonly fixedGain: number;
}

interface FieldGain {
  readonly gain: number;
  readonly variance: number;
}

/**
 * Gains of several fields or years pooled, with the true gain allowed to differ from field to field.
 *
 * @source dersimonian-laird-1986, knapp-hartung-2003, higgins-2009
 */
export function trialPool({ gains, standardErrors, confidencePct }: TrialPoolInput): TrialPool {
  within("confidence", confidencePct, trialLimits.confidence);
  const fields = fieldsOf(gains, standardErrors);
  const df = fields.length - 1;
  const fixed = weighted(fields, 0);
  const betweenVariance = betweenFields(fields, fixed);
  const random = weighted(fields, betweenVariance);
  const plainError = Math.sqrt(1 / random.total);
  const standardError = plainError * Math.sqrt(Math.max(1, random.q / df));
  const point = (freedom: number) => tForConfidence(confidencePct, freedom);
  const reach = point(df) * standardError;
  const newReach = fields.length > 2 ? point(df - 1) * Math.sqrt(betweenVariance + plainError ** 2) : null;
  return {
    fields: fields.length,
    gain: random.gain,
    standardError,
    low: random.gain - reach,
    high: random.gain + reach,
    chance: twoSidedChance(random.gain / standardError, df),
    newField: newReach === null ? null : { low: random.gain - newReach, high: random.gain + newReach },
    betweenSd: Math.sqrt(betweenVariance),
    q: fixed.q,
    qChance: 1 - chiSquaredCdf(fixed.q, df),
    realSharePct: fixed.q > 0 ? 100 * Math.max(0, (fixed.q - df) / fixed.q) : 0,
    weightsPct: weightsByRow({ gains, standardErrors }, betweenVariance, random.total),
    fixedGain: fixed.gain,
  };
}

/** Mean weighted by 1 / (own variance + variance between fields), and the weighted squares about it. */
function weighted(fields: readonly FieldGain[], betweenVariance: number) {
  const weights = fields.map(({ variance }) => 1 / (variance + betweenVariance));
  const total = sum(weights);
  const gains = fields.map((field) => field.gain);
  const gain = dot(gains, weights) / total;
  const q = dot(
    weights,
    gains.map((one) => (one - gain) ** 2),
  );
  return { gain, total, q, squares: sumOfSquares(weights) };
}

/** DerSimonian and Laird's moment estimate, not below 0. */
function betweenFields(fields: readonly FieldGain[], { q, total, squares }: ReturnType<typeof weighted>): number {
  return Math.max(0, (q - (fields.length - 1)) / (total - squares / total));
}

function weightsByRow(
  { gains, standardErrors }: Pick<TrialPoolInput, "gains" | "standardErrors">,
  betweenVariance: number,
  total: number,
): (number | null)[] {
  return gains.map((gain, index) => {
    const error = standardErrors[index] ?? null;
    return gain === null || error === null ? null : 100 / (error * error + betweenVariance) / total;
  });
}

function fieldsOf(gains: TrialPoolInput["gains"], errors: TrialPoolInput["standardErrors"]): FieldGain[] {
  sameLength("gains", gains, "standardErrors", errors);
  const fields = gains.flatMap((gain, index) => {
    const error = errors[index] ?? null;
    if (gain === null && error === null) return [];
    if (gain === null || error === null) {
      waitFor(gain === null ? "gains" : "standardErrors");
    }
    within("standardErrors", error, trialLimits.standardError);
    return [{ gain, variance: error * error }];
  });
  if (fields.length === 0) waitFor("gains");
  if (fields.length === 1) refuseOneField();
  return fields;
}

function refuseOneField(): never {
  refuseArgument("gains", "pooling takes at least two fields or years; got one.");
}
