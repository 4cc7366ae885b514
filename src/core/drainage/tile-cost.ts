import { needed, waitFor } from "../fault";
import { within } from "../limit";
import { squareFootPerAcre } from "../units/units";
import { drainageLimits } from "./drainage-limits";

/**
 * Feet of lateral on an acre.
 *
 *   43,560 / spacing
 *
 * @source tile-cost
 */
export function tileLength(spacingFt: number): number {
  within("spacing", spacingFt, drainageLimits.spacing);
  return squareFootPerAcre / spacingFt;
}

export interface TileJob {
  readonly spacingFt: number;
  /** Tubing and installation of a foot of lateral. */
  readonly lateralUsdPerFt: number;
  readonly mainFt: number;
  /** null: asked for where there is a main. */
  readonly mainUsdPerFt: number | null;
  /** Outlet, fittings, design. */
  readonly fixedUsd: number;
  /** null: asked for where mains or fixed costs have to be spread over acres. */
  readonly acres: number | null;
}

export interface TileCost {
  readonly costUsdPerAc: number;
  readonly lateralFtPerAc: number;
  readonly lateralUsdPerAc: number;
  readonly mainUsdPerAc: number;
  readonly fixedUsdPerAc: number;
  /** null: acres are not given. */
  readonly jobUsd: number | null;
}

/**
 * Cost of tiling an acre.
 *
 *   43,560 / spacing × $/ft + (main feet × $/ft + outlet, fittings and design) / acres
 *
 * @source tile-cost
 */
export function tileCost(job: TileJob): TileCost {
  const lateralFtPerAc = tileLength(job.spacingFt);
  within("pricePerFoot", job.lateralUsdPerFt, drainageLimits.pricePerFoot);
  within("mainFeet", job.mainFt, drainageLimits.mainFeet);
  if (job.mainUsdPerFt !== null) within("mainPrice", job.mainUsdPerFt, drainageLimits.pricePerFoot);
  within("fixedCost", job.fixedUsd, drainageLimits.fixedCost);
  if (job.acres !== null) within("acres", job.acres, drainageLimits.acresDrained);

  const mainUsd = job.mainFt === 0 ? 0 : job.mainFt * needed("mainPrice", job.mainUsdPerFt);
  const isShared = mainUsd + job.fixedUsd > 0;
  if (isShared && job.acres === null) waitFor("acres");
  const over = job.acres ?? 1;
  const lateralUsdPerAc = lateralFtPerAc * job.lateralUsdPerFt;
  const costUsdPerAc = lateralUsdPerAc + (mainUsd + job.fixedUsd) / over;
  return {
    costUsdPerAc,
    lateralFtPerAc,
    lateralUsdPerAc,
    mainUsdPerAc: mainUsd / over,
    fixedUsdPerAc: job.fixedUsd / over,
    jobUsd: job.acres === null ? null : costUsdPerAc * job.acres,
  };
}
