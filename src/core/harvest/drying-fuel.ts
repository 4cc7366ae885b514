import { within } from "../limit";
import { bushelWeight } from "../units/bushel-weight";
import type { GrainKey } from "../../reference/grain";
import { dryerEnergy, fuelHeat, fuels, type DryerKey, type FuelKey } from "../../reference/harvest/drying";
import type { Cited } from "../../reference/table";
import { grainShrink } from "./grain-shrink";
import { harvestLimits } from "./harvest-limits";
import { printedValue, type CitedValue } from "./printed-value";

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
  const { value: btuPerLb, cited: dryer } = dryerOf(task.dryerUse);
  const { value: btuPerUnit, cited: heat } = printedValue(fuelHeat, task.fuel);

  const waterLb = (task.wetBu * bushel.bushelWeightLb * shrink.waterPct) / 100;
  const waterLbPerDryBu = ((shrink.waterPct / 100) * bushel.bushelWeightLb) / shrink.paidShare;
  return {
    fuel: (waterLb * btuPerLb) / btuPerUnit,
    fuelUnit: fuels[task.fuel].unit,
    waterLb,
    energyBtu: waterLb * btuPerLb,
    btuPerLb,
    btuPerUnit,
    dryBu: task.wetBu * shrink.paidShare,
    waterLbPerDryBu,
    fuelPerDryBu: (waterLbPerDryBu * btuPerLb) / btuPerUnit,
    points: shrink.points,
    cited: [bushel, ...shrink.cited, ...dryer, ...heat],
  };
}

function dryerOf(use: DryerUse): CitedValue {
  if ("dryer" in use) return printedValue(dryerEnergy, use.dryer);
  within("dryer", use.btuPerLb, harvestLimits.energyPerPound);
  return { value: use.btuPerLb, cited: [] };
}
