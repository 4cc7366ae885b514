import { refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import { laborHours, oilShare, ownershipExtras } from "../../reference/machinery/fuel";
import {
  fieldMachines,
  type FieldMachine,
  type FieldMachineKey,
  type TractorKey,
} from "../../reference/machinery/machines";
import type { Cited } from "../../reference/table";
import { pctToFraction } from "../units/units";
import { sum } from "../statistics/sums";
import { fieldCapacity, type FieldCapacity, type FieldEfficiency } from "./field-capacity";
import { fuelUse, type EngineLoad, type FuelUse } from "./fuel-use";
import { tractorClass } from "./machine-value";
import { machineryLimits } from "./machinery-limits";
import { ownedMachine, type OwnedMachine } from "./owned-machine";

export interface PassTractor {
  readonly kind: TractorKey;
  readonly priceUsd: number;
  readonly listPriceUsd: number | null;
  readonly years: number | null;
  /** All its hours in a year, this pass and every other. */
  readonly hoursPerYear: number | null;
  readonly salvageUsd: number | null;
}

export interface PassCostInput {
  readonly implement: FieldMachineKey;
  readonly widthFt: number;
  readonly mph: number;
  readonly efficiencyPct: number | null;
  readonly acresPerYear: number;
  readonly priceUsd: number;
  readonly listPriceUsd: number | null;
  readonly salvageUsd: number | null;
  readonly years: number;
  readonly rate: number;
  readonly extrasPct: number;
  /** Rated PTO power of the tractor, or of the machine's own engine. */
  readonly horsepower: number;
  readonly load: EngineLoad;
  readonly fuelPriceUsdPerGal: number;
  readonly wageUsdPerHour: number;
  readonly laborFactor: number;
  /** null: its ownership and repairs are not counted. */
  readonly tractor: PassTractor | null;
}

export interface PassPart {
  readonly usdPerAc: number;
  readonly usdPerHour: number;
}

export interface PassCost {
  readonly implementOwnership: PassPart;
  readonly implementRepair: PassPart;
  readonly tractorOwnership: PassPart;
  readonly tractorRepair: PassPart;
  readonly fuel: PassPart;
  readonly oil: PassPart;
  readonly labor: PassPart;
  readonly total: PassPart;
  readonly countsTractor: boolean;
  readonly isSelfPropelled: boolean;
  readonly capacity: FieldCapacity;
  readonly fuelUse: FuelUse;
  readonly fuelGalPerAc: number;
  readonly laborHoursPerAc: number;
  readonly implement: OwnedMachine;
  readonly tractor: OwnedMachine | null;
  readonly cited: readonly Cited[];
}

/**
 * Cost of one pass over an acre: what it costs to own and repair the machines, fuel, oil and labor.
 *
 *   (dollars an hour of the implement and the tractor) / acres an hour
 *
 * The implement's ownership is spread over its own acres, the tractor's over all its hours.
 *
 * @source isu-a3-29, asabe-d497
 */
export function passCost(input: PassCostInput): PassCost {
  check(input);
  const efficiency: FieldEfficiency =
    input.efficiencyPct === null ? { machine: input.implement } : { efficiencyPct: input.efficiencyPct };
  const capacity = fieldCapacity({ widthFt: input.widthFt, mph: input.mph, efficiency });
  const { horsepower, load } = input;
  const fuelRate = fuelUse({ horsepower, load, fuel: "diesel", throttleReductionPct: 0 });
  const implement = implementOf(input, capacity.acPerHour);
  const tractor = input.tractor && tractorOf(input, input.tractor);
  const perHour = hourlyParts(input, fuelRate.galPerHour, implement, tractor);
  return {
    ...partsOf(perHour, capacity.acPerHour),
    countsTractor: tractor !== null,
    isSelfPropelled: isSelfPropelled(input.implement),
    capacity,
    fuelUse: fuelRate,
    fuelGalPerAc: fuelRate.galPerHour / capacity.acPerHour,
    laborHoursPerAc: input.laborFactor / capacity.acPerHour,
    implement,
    tractor,
    cited: [
      ...new Set([
        ...capacity.cited,
        ...implement.cited,
        ...(tractor?.cited ?? []),
        fuelRate.published,
        oilShare,
        laborHours,
        ownershipExtras,
      ]),
    ],
  };
}

const partNames = [
  "implementOwnership",
  "implementRepair",
  "tractorOwnership",
  "tractorRepair",
  "fuel",
  "oil",
  "labor",
] as const;

type HourlyParts = Readonly<Record<(typeof partNames)[number], number>>;

function hourlyParts(
  input: PassCostInput,
  galPerHour: number,
  implement: OwnedMachine,
  tractor: OwnedMachine | null,
): HourlyParts {
  const fuel = galPerHour * input.fuelPriceUsdPerGal;
  return {
    implementOwnership: implement.ownershipUsdPerHour,
    implementRepair: implement.repairUsdPerHour,
    tractorOwnership: tractor?.ownershipUsdPerHour ?? 0,
    tractorRepair: tractor?.repairUsdPerHour ?? 0,
    fuel,
    oil: fuel * pctToFraction(oilShare.pct),
    labor: input.wageUsdPerHour * input.laborFactor,
  };
}

function partsOf(perHour: HourlyParts, acPerHour: number): Record<keyof HourlyParts | "total", PassPart> {
  const part = (usdPerHour: number): PassPart => ({ usdPerHour, usdPerAc: usdPerHour / acPerHour });
  const { implementOwnership, implementRepair, tractorOwnership, tractorRepair, fuel, oil, labor } = perHour;
  return {
    implementOwnership: part(implementOwnership),
    implementRepair: part(implementRepair),
    tractorOwnership: part(tractorOwnership),
    tractorRepair: part(tractorRepair),
    fuel: part(fuel),
    oil: part(oil),
    labor: part(labor),
    total: part(sum(partNames.map((name) => perHour[name]))),
  };
}

function implementOf(input: PassCostInput, acPerHour: number): OwnedMachine {
  return ownedMachine({
    machine: input.implement,
    valueClass: fieldMachines[input.implement].valueClass,
    priceUsd: input.priceUsd,
    listPriceUsd: input.listPriceUsd ?? input.priceUsd,
    years: input.years,
    hoursPerYear: input.acresPerYear / acPerHour,
    rate: input.rate,
    extrasPct: input.extrasPct,
    salvageUsd: input.salvageUsd,
  });
}

function tractorOf(input: PassCostInput, tractor: PassTractor): OwnedMachine {
  const { hoursPerYear } = tractor;
  if (hoursPerYear === null) waitFor("tractorHours");
  within("tractorHours", hoursPerYear, { ...machineryLimits.hoursPerYear, min: 1 });
  return ownedMachine({
    machine: tractor.kind,
    valueClass: tractorClass(input.horsepower),
    priceUsd: tractor.priceUsd,
    listPriceUsd: tractor.listPriceUsd ?? tractor.priceUsd,
    years: tractor.years ?? input.years,
    hoursPerYear,
    rate: input.rate,
    extrasPct: input.extrasPct,
    salvageUsd: tractor.salvageUsd,
  });
}

function isSelfPropelled(implement: FieldMachineKey): boolean {
  const machine: FieldMachine = fieldMachines[implement];
  return machine.isSelfPropelled ?? false;
}

function check(input: PassCostInput): void {
  within("price", input.priceUsd, machineryLimits.price);
  within("acresPerYear", input.acresPerYear, machineryLimits.acres);
  within("years", input.years, machineryLimits.years);
  within("rate", input.rate, machineryLimits.rate);
  within("fuelPrice", input.fuelPriceUsdPerGal, machineryLimits.fuelPrice);
  within("wage", input.wageUsdPerHour, machineryLimits.wage);
  if (input.tractor && isSelfPropelled(input.implement)) {
    refuseArgument(
      "tractorPrice",
      `a ${fieldMachines[input.implement].label} drives itself: leave tractorPrice blank.`,
    );
  }
}
