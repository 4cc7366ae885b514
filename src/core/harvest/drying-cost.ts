import { needed } from "../fault";
import { within } from "../limit";
import { gasPerPoint, type GasRuleKey } from "../../reference/harvest/drying";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";
import { printedValue, type CitedValue } from "./printed-value";

/** LP gas for a bushel and point: measured by the person, or a word for a published rule. */
export type GasUse = { readonly galPerBuPoint: number } | { readonly rule: GasRuleKey };

export interface DryingWork {
  readonly points: number;
  readonly bushels: number;
  readonly fuelPriceUsdPerGal: number;
  readonly gasUse: GasUse;
  readonly fanKwhPerBu: number;
  /** null: asked for where fans run. */
  readonly powerPriceUsdPerKwh: number | null;
  readonly otherUsdPerBu: number;
}

export interface DryingCost {
  readonly costUsd: number;
  readonly fuelUsdPerBu: number;
  readonly fanUsdPerBu: number;
  readonly costUsdPerBu: number;
  readonly fuelUsdPerBuPoint: number;
  readonly galPerBuPoint: number;
  readonly gallons: number;
  readonly cited: readonly Cited[];
}

/**
 * Cost of drying in heated air.
 *
 *   per bushel = points × gal per point × $/gal + kWh × $/kWh + labor and ownership
 *
 * @source ndsu-drying, isu-sdsu-drying-rule
 */
export function dryingCost(work: DryingWork): DryingCost {
  within("points", work.points, harvestLimits.points);
  within("bushels", work.bushels, harvestLimits.bushels);
  within("fuelPrice", work.fuelPriceUsdPerGal, harvestLimits.fuelPrice);
  within("fanPower", work.fanKwhPerBu, harvestLimits.fanPower);
  within("otherCost", work.otherUsdPerBu, harvestLimits.costPerBushel);
  const { value: galPerBuPoint, cited } = gasOf(work.gasUse);

  const fuelUsdPerBuPoint = galPerBuPoint * work.fuelPriceUsdPerGal;
  const fuelUsdPerBu = work.points * fuelUsdPerBuPoint;
  const fanUsdPerBu = fanCost(work);
  const costUsdPerBu = fuelUsdPerBu + fanUsdPerBu + work.otherUsdPerBu;
  return {
    costUsd: costUsdPerBu * work.bushels,
    fuelUsdPerBu,
    fanUsdPerBu,
    costUsdPerBu,
    fuelUsdPerBuPoint,
    galPerBuPoint,
    gallons: galPerBuPoint * work.points * work.bushels,
    cited,
  };
}

function fanCost({ fanKwhPerBu, powerPriceUsdPerKwh }: DryingWork): number {
  if (powerPriceUsdPerKwh !== null) within("powerPrice", powerPriceUsdPerKwh, harvestLimits.powerPrice);
  if (fanKwhPerBu === 0) return 0;
  return fanKwhPerBu * needed("powerPrice", powerPriceUsdPerKwh);
}

function gasOf(use: GasUse): CitedValue {
  if ("rule" in use) return printedValue(gasPerPoint, use.rule);
  within("fuelPerPoint", use.galPerBuPoint, harvestLimits.fuelPerPoint);
  return { value: use.galPerBuPoint, cited: [] };
}
