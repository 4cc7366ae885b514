import { limits } from "../core/limits";
import { optional, percent } from "./frame";

/** Unit of a chance that stands in a cell, alone or in a table. Sentences say it in percent. */
export const chanceUnit = limits.chance.unit;

const missesOnce = {
  90: "90, usual for on-farm strips: misses once in 10",
  95: "95: misses once in 20",
} as const;

/** How sure a range shall be, in percent points, with what the trade usually takes. */
export function confidence(usualPct: keyof typeof missesOnce) {
  return optional(percent(limits.confidence, { says: "how sure the range should be" }), usualPct, missesOnce[usualPct]);
}
