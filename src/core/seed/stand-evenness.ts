import { refuse, waitFor } from "../fault";
import { within } from "../limit";
import {
  spacingClasses,
  spacingLosses,
  toleratedSpread,
  type SpacingLossKey,
  type SpacingLossRow,
} from "../../reference/seed/spacing-loss";
import type { Cited } from "../../reference/table";
import { mean, sampleSd } from "../statistics/sums";
import { seedLimits } from "./seed-limits";

/** Typed by the person, or a published figure by its word. */
export type LossPerInch = { readonly buPerAcPerIn: number } | { readonly key: SpacingLossKey };

export interface StandEvennessInput {
  readonly gapsIn: readonly number[];
  readonly lossPerInch: LossPerInch;
  /** Spread that costs nothing; null: the published 2 in. */
  readonly toleratedIn: number | null;
  /** Distance the planter was set to; null: doubles and skips are not told apart. */
  readonly nominalIn: number | null;
}

export interface SpacingShares {
  readonly singlesPct: number;
  readonly doublesPct: number;
  readonly skipsPct: number;
}

export interface StandEvenness {
  readonly gaps: number;
  readonly meanIn: number;
  readonly sdIn: number;
  readonly lossBuPerAc: number;
  readonly lossPerInch: number;
  readonly toleratedIn: number;
  readonly shares: SpacingShares | null;
  readonly cited: readonly Cited[];
}

/**
 * Spread of plant-to-plant distances in a row and the corn it costs.
 *
 *   (SD − tolerated) × loss for each inch, none below      SD the sample deviation in inches
 *
 * @source ssmg-37
 */
export function standEvenness({ gapsIn, lossPerInch, toleratedIn, nominalIn }: StandEvennessInput): StandEvenness {
  for (const gap of gapsIn) within("gaps", gap, seedLimits.gap);
  if (gapsIn.length === 0) waitFor("gaps");
  if (gapsIn.length < 2) refuse({ kind: "tooFew", argument: "gaps", received: gapsIn.length, atLeast: 2 });
  if (toleratedIn !== null) within("tolerated", toleratedIn, seedLimits.toleratedSpread);
  const { perInch, row } = lossOf(lossPerInch);

  const sdIn = sampleSd(gapsIn);
  const tolerated = toleratedIn ?? toleratedSpread.inches;
  const shares = nominalIn === null ? null : sharesOf(gapsIn, nominalIn);
  return {
    gaps: gapsIn.length,
    meanIn: mean(gapsIn),
    sdIn,
    lossBuPerAc: Math.max(0, sdIn - tolerated) * perInch,
    lossPerInch: perInch,
    toleratedIn: tolerated,
    shares,
    cited: [...row, ...(toleratedIn === null ? [toleratedSpread] : []), ...(shares ? [spacingClasses] : [])],
  };
}

function lossOf(loss: LossPerInch): { perInch: number; row: readonly SpacingLossRow[] } {
  if ("buPerAcPerIn" in loss) {
    within("lossPerInch", loss.buPerAcPerIn, seedLimits.lossPerInch);
    return { perInch: loss.buPerAcPerIn, row: [] };
  }
  const row = spacingLosses.rows.find(({ key }) => key === loss.key);
  if (!row) refuse({ kind: "notPublished", what: `loss under ${loss.key}`, where: `"${spacingLosses.title}"` });
  return { perInch: row.buPerAcPerIn, row: [row] };
}

/** Up to half the nominal distance a double, more than one and a half times a skip, else a single. */
function sharesOf(gapsIn: readonly number[], nominalIn: number): SpacingShares {
  within("nominal", nominalIn, seedLimits.nominalSpacing);
  const doubles = gapsIn.filter((gap) => gap <= spacingClasses.doubleUpTo * nominalIn).length;
  const skips = gapsIn.filter((gap) => gap > spacingClasses.skipAbove * nominalIn).length;
  const pct = (count: number) => (100 * count) / gapsIn.length;
  return {
    singlesPct: pct(gapsIn.length - doubles - skips),
    doublesPct: pct(doubles),
    skipsPct: pct(skips),
  };
}
