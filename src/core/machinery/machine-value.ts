import { refuse, waitFor } from "../fault";
import { within } from "../limit";
import { remainingValues, type RemainingValue, type ValueClassKey } from "../../reference/machinery/remaining-value";
import { machineryLimits } from "./machinery-limits";

export interface MachineValueInput {
  readonly valueClass: ValueClassKey;
  readonly ageYears: number;
  /** Average of the years; null where the class does not ask. */
  readonly hoursPerYear: number | null;
  /** Of an equal new machine today. */
  readonly listPriceUsd: number;
}

export interface MachineValue {
  readonly valueUsd: number;
  readonly ofListPct: number;
  readonly lostUsd: number;
  /** Whether hours count in this class. */
  readonly countsHours: boolean;
  readonly published: RemainingValue;
}

/**
 * What a machine is worth at an age.
 *
 *   list price × (start - age √years - use √hours a year)², nothing once the bracket is below 0
 *
 * @source cross-perry-1995, asabe-d497
 */
export function machineValue({ valueClass, ageYears, hoursPerYear, listPriceUsd }: MachineValueInput): MachineValue {
  within("age", ageYears, machineryLimits.age);
  within("listPrice", listPriceUsd, machineryLimits.listPrice);
  if (hoursPerYear !== null) within("hoursPerYear", hoursPerYear, machineryLimits.hoursPerYear);
  const published: RemainingValue = remainingValues[valueClass];
  const countsHours = published.use > 0;
  if (countsHours && hoursPerYear === null) waitFor("hoursPerYear");

  const worn = published.age * Math.sqrt(ageYears) + published.use * Math.sqrt(hoursPerYear ?? 0);
  const share = Math.max(0, published.start - worn) ** 2;
  return {
    valueUsd: share * listPriceUsd,
    ofListPct: 100 * share,
    lostUsd: (1 - share) * listPriceUsd,
    countsHours,
    published,
  };
}

/** The tractor class of a rated PTO horsepower. */
export function tractorClass(horsepower: number): ValueClassKey {
  if (horsepower >= remainingValues.tractorLarge.fromHp) return "tractorLarge";
  if (horsepower >= remainingValues.tractorMiddle.fromHp) return "tractorMiddle";
  if (horsepower >= remainingValues.tractorSmall.fromHp) return "tractorSmall";
  refuse({
    kind: "notPublished",
    what: `remaining value of a tractor of ${horsepower} hp`,
    where: "the standard",
    instead: "It begins at 30 hp.",
  });
}
