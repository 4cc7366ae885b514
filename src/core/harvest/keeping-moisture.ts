import { within } from "../limit";
import { cornEquilibrium, safeMoistures, type SafeMoistureRow } from "../../reference/harvest/storage";
import { harvestLimits } from "./harvest-limits";

/**
 * Moisture at which sound corn keeps for a number of months.
 *
 * @source purdue-storage-moisture
 */
export function safeMoisture(months: number): SafeMoistureRow {
  within("months", months, harvestLimits.months);
  const [half, year, longer] = safeMoistures.rows;
  if (months <= half.monthsAtMost) return half;
  return months <= year.monthsAtMost ? year : longer;
}

export interface EquilibriumMoisture {
  readonly wetBasisPct: number;
  readonly dryBasisPct: number;
  readonly temperatureC: number;
  readonly cited: typeof cornEquilibrium.rows;
}

/**
 * Moisture that shelled corn comes to in air that stays as it is.
 *
 *   % of dry weight = -ln( -ln(humidity) × (°C + 30.205) / 312.40 ) / 0.16958
 *
 * @source asabe-d245
 */
export function equilibriumMoisture(humidityPct: number, temperatureF: number): EquilibriumMoisture {
  within("humidity", humidityPct, harvestLimits.humidity);
  within("temperature", temperatureF, harvestLimits.airTemperature);
  const [corn] = cornEquilibrium.rows;

  const temperatureC = ((temperatureF - 32) * 5) / 9;
  const pull = (-Math.log(humidityPct / 100) * (temperatureC + corn.temperatureShiftC)) / corn.scale;
  const dryBasisPct = -Math.log(pull) / corn.moistureFactor;
  const wetBasisPct = (100 * dryBasisPct) / (100 + dryBasisPct);
  return { wetBasisPct, dryBasisPct, temperatureC, cited: cornEquilibrium.rows };
}
