import { refuseArgument, waitFor } from "../fault";
import { foldedName } from "../folded-name";
import { within } from "../limit";
import { sameLength } from "../same-length";
import { mean } from "../statistics/sums";
import { trialLimits } from "./trial-limits";

export interface TrialTrendInput {
  /** Place of each strip across the field: strip numbers, or feet from the edge. */
  readonly positions: readonly (number | null)[];
  readonly treatments: readonly (string | null)[];
  readonly yields: readonly (number | null)[];
  /** The treatment that stands in every few strips as the check. */
  readonly check: string;
  /** How much of the trend is taken out. */
  readonly sharePct: number;
}

export interface AdjustedStrip {
  readonly position: number;
  readonly treatment: string;
  readonly yieldBuPerAc: number;
  /** What a check would have yielded here, from its neighbours. */
  readonly checkHereBuPerAc: number;
  readonly adjustedBuPerAc: number;
}

export interface TrialTrend {
  readonly checks: number;
  readonly checkMeanBuPerAc: number;
  readonly strips: readonly AdjustedStrip[];
}

interface PlacedStrip {
  readonly position: number;
  readonly treatment: string;
  readonly yieldBuPerAc: number;
}

/**
 * Yields freed of a trend across the field, by the check strips beside them: the check is drawn straight from one check
 * strip to the next, and held level beyond the outermost.
 *
 *   yield − share · (check here − mean of the checks)
 */
export function trialTrend(input: TrialTrendInput): TrialTrend {
  within("share", input.sharePct, trialLimits.trendShare);
  const strips = placedStrips(input);
  const isCheck = ({ treatment }: PlacedStrip) => foldedName(treatment) === foldedName(input.check);
  const checks = strips.filter(isCheck).sort((a, b) => a.position - b.position);
  if (checks.length < 2) refuseFewChecks(input.check, checks.length);
  if (checks.length === strips.length) refuseOnlyChecks(input.check);
  const checkMeanBuPerAc = mean(checks.map(({ yieldBuPerAc }) => yieldBuPerAc));
  return {
    checks: checks.length,
    checkMeanBuPerAc,
    strips: strips.map((strip) => {
      const checkHereBuPerAc = checkAt(strip.position, checks);
      const taken = (input.sharePct / 100) * (checkHereBuPerAc - checkMeanBuPerAc);
      return { ...strip, checkHereBuPerAc, adjustedBuPerAc: strip.yieldBuPerAc - taken };
    }),
  };
}

function checkAt(position: number, checks: readonly PlacedStrip[]): number {
  const next = checks.find((check) => check.position >= position);
  const before = checks.filter((check) => check.position <= position).at(-1);
  if (!before || !next) return (before ?? next)?.yieldBuPerAc ?? 0;
  const apart = next.position - before.position;
  const along = apart > 0 ? (position - before.position) / apart : 0;
  return before.yieldBuPerAc + along * (next.yieldBuPerAc - before.yieldBuPerAc);
}

function placedStrips({ positions, treatments, yields }: TrialTrendInput): PlacedStrip[] {
  sameLength("positions", positions, "treatments", treatments);
  sameLength("positions", positions, "yields", yields);
  const strips = positions.flatMap((position, index): PlacedStrip[] => {
    const treatment = treatments[index] ?? null;
    const yieldBuPerAc = yields[index] ?? null;
    // A strip without a yield was lost; it has nothing to adjust.
    if (yieldBuPerAc === null) return [];
    if (position === null) waitFor("positions");
    if (treatment === null) waitFor("treatments");
    return [{ position, treatment, yieldBuPerAc }];
  });
  if (strips.length === 0) waitFor("yields");
  refuseSamePlace(strips);
  return strips;
}

function refuseSamePlace(strips: readonly PlacedStrip[]): void {
  const seen = new Set<number>();
  for (const { position } of strips) {
    if (seen.has(position)) {
      refuseArgument("positions", `two strips stand at ${position}; number them across the field.`);
    }
    seen.add(position);
  }
}

function refuseFewChecks(check: string, count: number): never {
  const because = `a trend takes at least two strips of "${check}" with yields; found ${count}.`;
  refuseArgument("check", because);
}

function refuseOnlyChecks(check: string): never {
  refuseArgument("treatments", `every strip is "${check}"; there is nothing to adjust.`);
}
