import { refuseArgument } from "../fault";
import { within } from "../limit";
import { cubicFootPerVolumeBushel } from "../units/units";
import { grainPeaks, type PeakGrainKey } from "../../reference/harvest/storage";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";

/** Height of the peak, below 0 for a cone drawn down; or the grain whose usual peak it is. */
export type Peak = { readonly heightFt: number } | { readonly grain: PeakGrainKey };

export interface BinGrain {
  readonly diameterFt: number;
  /** From the floor to where the grain meets the wall. */
  readonly depthFt: number;
  readonly peak: Peak;
  readonly packFactor: number;
}

export interface BinVolume {
  readonly bushels: number;
  readonly levelBu: number;
  /** Below 0 for a cone drawn down. */
  readonly peakBu: number;
  readonly peakFt: number;
  readonly volumeCuFt: number;
  readonly bushelsPerFoot: number;
  readonly cited: readonly Cited[];
}

/**
 * Bushels in a round bin, by volume.
 *
 *   (pi/4 × diameter² × depth + pi/4 × diameter² × peak / 3) / 1.2445 × pack factor      feet
 *
 * @source iowa-grain-warehouse
 */
export function binVolume({ diameterFt, depthFt, peak, packFactor }: BinGrain): BinVolume {
  within("diameter", diameterFt, harvestLimits.binDiameter);
  within("depth", depthFt, harvestLimits.grainDepth);
  within("packFactor", packFactor, harvestLimits.packFactor);
  const { heightFt, cited } = peakOf(peak, diameterFt);
  if (-heightFt > depthFt) refuseCone();

  const bushelsPerFoot = ((Math.PI / 4) * diameterFt ** 2 * packFactor) / cubicFootPerVolumeBushel;
  const levelBu = bushelsPerFoot * depthFt;
  const peakBu = (bushelsPerFoot * heightFt) / 3;
  return {
    bushels: levelBu + peakBu,
    levelBu,
    peakBu,
    peakFt: heightFt,
    volumeCuFt: (Math.PI / 4) * diameterFt ** 2 * (depthFt + heightFt / 3),
    bushelsPerFoot,
    cited,
  };
}

function peakOf(peak: Peak, diameterFt: number): { heightFt: number; cited: readonly Cited[] } {
  if ("heightFt" in peak) {
    within("peak", peak.heightFt, harvestLimits.peak);
    return { heightFt: peak.heightFt, cited: [] };
  }
  const rows = grainPeaks.rows.filter(({ grain }) => grain === peak.grain);
  return { heightFt: ((rows[0]?.shareOfRadius ?? Number.NaN) * diameterFt) / 2, cited: rows };
}

function refuseCone(): never {
  refuseArgument("peak", "the cone drawn down reaches below the floor of the bin.");
}
