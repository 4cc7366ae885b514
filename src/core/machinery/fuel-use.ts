import { refuse, refuseArgument } from "../fault";
import { within } from "../limit";
import { dieselByLoad, fuels, type FuelKey } from "../../reference/machinery/fuel";
import type { Cited } from "../../reference/table";
import { literPerGallon, pctToFraction } from "../units/units";
import { machineryLimits } from "./machinery-limits";

/** Share of the rated power that the work takes, or the mixed work of a season. */
export type EngineLoad = { readonly loadPct: number } | "average";

export interface FuelUseInput {
  /** Rated PTO horsepower. */
  readonly horsepower: number;
  readonly load: EngineLoad;
  readonly fuel: FuelKey;
  /** How far the engine is throttled back from full speed, %. */
  readonly throttleReductionPct: number;
}

export interface FuelUse {
  readonly galPerHour: number;
  readonly galPerHpHour: number;
  readonly published: Cited;
}

const kilowattPerHp = 0.7457;

/**
 * Fuel an engine burns in an hour.
 *
 *   season average: 0.044 gal/h (gasoline 0.06) for each rated PTO hp
 *   diesel by load: L/h = (0.22 X + 0.096) (1 - (-0.0045 X N + 0.00877 N)) kW
 *
 * X is the load as a share of rated power, N the cut in engine speed in %.
 *
 * @source isu-a3-29, grisso-2004
 */
export function fuelUse({ horsepower, load, fuel, throttleReductionPct }: FuelUseInput): FuelUse {
  within("horsepower", horsepower, machineryLimits.horsepower);
  within("throttleReduction", throttleReductionPct, machineryLimits.throttleReduction);
  if (load === "average") return averageUse(horsepower, fuel, throttleReductionPct);
  within("load", load.loadPct, machineryLimits.load);
  if (fuel !== "diesel") {
    refuse({
      kind: "notPublished",
      what: `fuel by load for ${fuels[fuel].label}`,
      where: "the equation by load, made on diesel tractors,",
      instead: 'Use "average" as load.',
    });
  }
  const { slope, idle, cross, throttle } = dieselByLoad;
  const share = pctToFraction(load.loadPct);
  const spared = 1 - (throttle - cross * share) * throttleReductionPct;
  const galPerHour = ((slope * share + idle) * spared * kilowattPerHp * horsepower) / literPerGallon;
  return { galPerHour, galPerHpHour: galPerHour / (share * horsepower), published: dieselByLoad };
}

function averageUse(horsepower: number, fuel: FuelKey, throttleReductionPct: number): FuelUse {
  if (throttleReductionPct > 0) {
    refuseArgument(
      "throttleReduction",
      "the season average knows no throttle: enter the load in percent, or leave this blank.",
    );
  }
  const published = fuels[fuel];
  return { galPerHour: published.galPerHpHour * horsepower, galPerHpHour: published.galPerHpHour, published };
}
