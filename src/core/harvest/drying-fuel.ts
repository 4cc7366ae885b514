import { within } from "../limit";
import { bushelWeight } from "../units/bushel-weight";
import type { GrainKey } from "../../reference/grain";
import { dryerEnergy, fuelHeat, fuels, type DryerKey, type FuelKey } from "../../reference/harvest/drying";
import type { Cited } from "../../reference/table";
import { grainShrink } from "./grain-shrink";
import { harvestLimits } from "./harvest-limits";

/** Heat for a pound of water: measured by the person, or a kind of dryer. */
export type DryerUse = { readonly btuPerLb: number } | { readonly dryer: DryerKey };

export interface DryingTask {
  readonly wetBu: number;
  readonly moisturePct: number;
  readonly grain: GrainKey;
  readonly fuel: FuelKey;
  readonly dryerUse: DryerUse;
  /** null: the usual market moisture. */
  readonly targetMoisturePct: number | null;
}

export interface DryingFuel {
  readonly fuel: number;
  readonly fuelUnit: string;
  readonly waterLb: number;
  readonly energyBtu: number;
  readonly btuPerLb: number;
  readonly btuPerUnit: number;
  readonly dryBu: number;
  readonly waterLbPerDryBu: number;
  readonly fuelPerDryBu: number;
  readonly points: number;
  readonly cited: readonly Cited[];
}

/**
 * Fuel that drying takes.
 *
 *   pounds of water = wet bushels × bushel weight × (moisture - target) / (100 - target)
 *   fuel = pounds of water × BTU per pound / BTU in a unit of fuel
 *
 * @source dry-matter-balance, dryer-energy, fuel-heat-content
 */
export function dryingFuel(task: DryingTask): DryingFuel {
  within("bushels", task.wetBu, harvestLimits.bushels);
  const shrink = grainShrink({
    grain: task.grain,
    moisturePct: task.moisturePct,
    marketMoisturePct: task.targetMoisturePct,
    handlingLossPct: 0,
    shrinkPerPointPct: null,
  });
  const bushel = bushelWeight(task.grain);
  const dryer = dryerOf(task.dryerUse);
  const heat = fuelHeat.rows.filter(({ key }) => key === task.fuel);
  const btuPerUnit = heat[0]?.value ?? Number.NaN;

  const waterLb = (task.wetBu * bushel.bushelWeightLb * shrink.waterPct) / 100;
  const waterLbPerDryBu = ((shrink.waterPct / 100) * bushel.bushelWeightLb) / shrink.paidShare;
  return {
    fuel: (waterLb * dryer.btuPerLb) / btuPerUnit,
    fuelUnit: fuels[task.fuel].unit,
    waterLb,
    energyBtu: waterLb * dryer.btuPerLb,
    btuPerLb: dryer.btuPerLb,
    btuPerUnit,
    dryBu: task.wetBu * shrink.paidShare,
    waterLbPerDryBu,
    fuelPerDryBu: (waterLbPerDryBu * dryer.btuPerLb) / btuPerUnit,
    points: shrink.points,
    cited: [bushel, ...shrink.cited, ...dryer.cited, ...heat],
  };
}

function dryerOf(use: DryerUse): { btuPerLb: number; cited: readonly Cited[] } {
  if ("btuPerLb" in use) {
    within("dryer", use.btuPerLb, harvestLimits.energyPerPound);
    return { btuPerLb: use.btuPerLb, cited: [] };
  }
  const rows = dryerEnergy.rows.filter(({ key }) => key === use.dryer);
  return { btuPerLb: rows[0]?.value ?? Number.NaN, cited: rows };
}
