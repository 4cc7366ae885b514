import { refuse } from "../fault";
import { within } from "../limit";
import { cornEmergence, lateHybrid } from "../../reference/seed/corn-heat";
import type { Cited } from "../../reference/table";
import { heatLimits } from "./heat-limits";
import { dayInWords, seasonDay, seasonDayOf } from "./season-day";

export interface MaturityNeedInput {
  /** Heat units to black layer on the hybrid's rating. */
  readonly rating: number;
  /** Spreadsheet date; null: no later than May 1. */
  readonly plantedOn: number | null;
  readonly ratedFrom: "planting" | "emergence";
}

export interface MaturityNeed {
  readonly heatUnits: number;
  readonly daysLate: number;
  readonly savedByLateness: number;
  readonly addedForEmergence: number;
  readonly cited: readonly Cited[];
}

/**
 * Heat units from planting to black layer of a hybrid.
 *
 *   rating (+ 115 when rated from emergence) − 6.8 × days planted after May 1
 *
 * @source nielsen-2002
 */
export function maturityNeed({ rating, plantedOn, ratedFrom }: MaturityNeedInput): MaturityNeed {
  within("hybridNeed", rating, heatLimits.hybridNeed);
  const daysLate = plantedOn === null ? 0 : daysPastMayFirst(seasonDayOf(plantedOn));
  const savedByLateness = daysLate * lateHybrid.heatUnitsPerDay;
  const addedForEmergence = ratedFrom === "emergence" ? cornEmergence.heatUnits : 0;
  return {
    heatUnits: rating + addedForEmergence - savedByLateness,
    daysLate,
    savedByLateness,
    addedForEmergence,
    cited: [...(daysLate > 0 ? [lateHybrid] : []), ...(addedForEmergence > 0 ? [cornEmergence] : [])],
  };
}

/** Heat units to spare at the freeze; below 0 the hybrid does not make it. */
export function maturityMargin(input: MaturityNeedInput & { readonly heatUnitsLeft: number }) {
  within("heatUnitsLeft", input.heatUnitsLeft, heatLimits.heatUnits);
  const need = maturityNeed(input);
  return { margin: input.heatUnitsLeft - need.heatUnits, need };
}

function daysPastMayFirst(day: number): number {
  const last = seasonDay(...lateHybrid.to);
  if (day <= last) return Math.max(0, day - seasonDay(...lateHybrid.from));
  refuse({
    kind: "notPublished",
    what: `need of a hybrid planted ${dayInWords(day)}`,
    where: "Nielsen 2002",
    instead: `It goes to ${dayInWords(last)}.`,
  });
}
