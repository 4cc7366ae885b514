import { bushelWeights, marketMoistures } from "../../reference/grain";
import type { DryResidueRow } from "../../reference/nutrients";

/**
 * Dry straw or stover left by a grain crop, lb per bushel of grain.
 *
 *   bushel weight × (1 − market moisture) × dry residue per dry grain
 *
 * 47.3 lb for corn, 51.9 lb for wheat.
 */
export function dryResidueLbPerBu({ crop, residuePerGrain }: DryResidueRow): number {
  const weight = bushelWeights.rows.find(({ grain }) => grain === crop);
  const moisture = marketMoistures.rows.find(({ grain }) => grain === crop);
  if (!weight || !moisture) return Number.NaN;
  return ((weight.bushelWeightLb * (100 - moisture.marketMoisturePct)) / 100) * residuePerGrain;
}
