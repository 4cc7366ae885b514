import { waitFor } from "../fault";
import type { CropKey } from "../../reference/crops";
import type { NutrientKey, PartKey, RemovalSetKey } from "../../reference/nutrients";
import { sameLength } from "../same-length";
import { sum } from "../statistics/sums";
import { removal, type Removal } from "./removal";

export interface Rotation {
  /** One entry per year; null where a cell is blank. */
  readonly crops: readonly (CropKey | null)[];
  readonly yields: readonly (number | null)[];
  /** null: the main part of every crop. */
  readonly parts: readonly (PartKey | null)[] | null;
  readonly nutrient: NutrientKey;
  /** lb/ac of the nutrient put on, each application or one total. */
  readonly appliedLbPerAc: readonly number[];
  readonly set: RemovalSetKey | null;
}

export interface RotationBalance {
  readonly balanceLbPerAc: number;
  readonly appliedLbPerAc: number;
  readonly removedLbPerAc: number;
  readonly years: number;
  readonly balanceLbPerAcYear: number;
  readonly harvests: readonly { readonly crop: CropKey; readonly removal: Removal }[];
}

/**
 * Nutrient applied less nutrient removed over the years of a rotation, lb/ac.
 *
 *   balance = Σ applied − Σ yield × published lb per unit
 *
 * A year with neither crop nor yield is passed over; a crop without its yield is waited for.
 */
export function rotationBalance({ crops, yields, parts, nutrient, appliedLbPerAc, set }: Rotation): RotationBalance {
  sameLength("crops", crops, "yields", yields);
  if (parts) sameLength("crops", crops, "parts", parts);
  const harvests: { crop: CropKey; removal: Removal }[] = [];
  crops.forEach((crop, year) => {
    const yieldPerAc = yields[year] ?? null;
    if (crop === null && yieldPerAc === null) return;
    if (crop === null) waitFor("crops");
    if (yieldPerAc === null) waitFor("yields");
    const part = parts?.[year] ?? null;
    const harvest = { crop, yieldPerAc, nutrient, part, set, moisturePct: null, yieldName: "yields" };
    harvests.push({ crop, removal: removal(harvest) });
  });
  if (harvests.length === 0) waitFor("crops");
  const applied = sum(appliedLbPerAc);
  const removed = sum(harvests.map((harvest) => harvest.removal.removedLbPerAc));
  return {
    balanceLbPerAc: applied - removed,
    appliedLbPerAc: applied,
    removedLbPerAc: removed,
    years: harvests.length,
    balanceLbPerAcYear: (applied - removed) / harvests.length,
    harvests,
  };
}
