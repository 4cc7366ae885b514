import type { CropKey } from "../crops";
import type { Cited } from "../table";
import type { SinglePart } from "./parts";

/** Dry straw or stover left by a bushel of grain, from the grain's own dry weight. */
export interface DryResidueRow extends Cited {
  readonly crop: CropKey;
  readonly part: Extract<SinglePart, "straw" | "stover">;
  readonly bushelWeightLb: number;
  /** % of wet weight at market. */
  readonly grainMoisturePct: number;
  /** Dry residue per unit of dry grain. */
  readonly residuePerGrain: number;
}

export const dryResidue: readonly DryResidueRow[] = [
  {
    crop: "corn",
    part: "stover",
    bushelWeightLb: 56,
    grainMoisturePct: 15.5,
    residuePerGrain: 1,
    mark: "V",
    source: "uiuc-residue",
  },
  {
    crop: "wheat",
    part: "straw",
    bushelWeightLb: 60,
    grainMoisturePct: 13.5,
    residuePerGrain: 1,
    mark: "V",
    source: "uiuc-wheat-straw",
  },
  {
    crop: "springWheat",
    part: "straw",
    bushelWeightLb: 60,
    grainMoisturePct: 13.5,
    residuePerGrain: 1,
    mark: "V",
    source: "uiuc-wheat-straw",
    note: "Printed for wheat.",
  },
  {
    crop: "soybean",
    part: "stover",
    bushelWeightLb: 60,
    grainMoisturePct: 13,
    residuePerGrain: (1 - 0.42) / 0.42,
    mark: "M",
    source: "residue-harvest-index",
    note: "Harvest index 0.42.",
  },
];
