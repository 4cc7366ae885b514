import type { DryResidueRow } from "../../reference/nutrients";

const lbPerTon = 2000;

/**
 * Dry straw or stover left by a grain crop, lb per bushel of grain.
 *
 *   bushel weight × (1 − moisture) × dry residue per dry grain
 *
 * 47.3 lb for corn, 51.9 lb for wheat.
 */
export function dryResidueLbPerBu({ bushelWeightLb, grainMoisturePct, residuePerGrain }: DryResidueRow): number {
  return ((bushelWeightLb * (100 - grainMoisturePct)) / 100) * residuePerGrain;
}

/** The same for a whole yield, ton/ac dry. */
export function dryResidueTon(row: DryResidueRow, bushelsPerAc: number): number {
  return (bushelsPerAc * dryResidueLbPerBu(row)) / lbPerTon;
}
