import { yearlyCost } from "../capital/yearly-cost";
import { pctToFraction } from "../units/units";
import type { MachineKey } from "../../reference/machinery/machines";
import type { ValueClassKey } from "../../reference/machinery/remaining-value";
import type { Cited } from "../../reference/table";
import { machineValue } from "./machine-value";
import { repairCost } from "./repair-cost";

export interface OwnedMachineInput {
  readonly machine: MachineKey;
  readonly valueClass: ValueClassKey;
  readonly priceUsd: number;
  readonly listPriceUsd: number;
  readonly years: number;
  readonly hoursPerYear: number;
  /** Fraction a year. */
  readonly rate: number;
  /** Taxes, insurance and housing, % of the price a year. */
  readonly extrasPct: number;
  /** null: what the standard leaves of the list price. */
  readonly salvageUsd: number | null;
}

export interface OwnedMachine {
  readonly ownershipUsdPerHour: number;
  readonly repairUsdPerHour: number;
  readonly ownershipUsdPerYr: number;
  readonly salvageUsd: number;
  readonly hoursPerYear: number;
  readonly lifetimeHours: number;
  readonly isPastLife: boolean;
  readonly cited: readonly Cited[];
}

/**
 * What an owned machine costs for each hour it runs, over the years it is kept: capital recovery, taxes, insurance
 * and housing, and the mean of its repairs.
 *
 * @source isu-a3-29, asabe-d497
 */
export function ownedMachine(input: OwnedMachineInput): OwnedMachine {
  const { machine, valueClass, priceUsd, listPriceUsd, years, hoursPerYear, rate, extrasPct } = input;
  const left = machineValue({ valueClass, ageYears: years, hoursPerYear, listPriceUsd });
  const salvageUsd = input.salvageUsd ?? left.valueUsd;
  const yearly = yearlyCost({ investmentUsd: priceUsd, years, rate, salvageUsd });
  const ownershipUsdPerYr = yearly.costUsdPerYr + pctToFraction(extrasPct) * priceUsd;
  const lifetimeHours = years * hoursPerYear;
  const repairs = repairCost({ machine, listPriceUsd, fromHours: 0, toHours: lifetimeHours });
  return {
    ownershipUsdPerHour: ownershipUsdPerYr / hoursPerYear,
    repairUsdPerHour: repairs.usdPerHour ?? 0,
    ownershipUsdPerYr,
    salvageUsd,
    hoursPerYear,
    lifetimeHours,
    isPastLife: repairs.isPastLife,
    cited: [...(input.salvageUsd === null ? [left.published] : []), repairs.published],
  };
}
