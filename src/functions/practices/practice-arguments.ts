import type { RangeShape } from "../../core/practices/practice-belief";
import { practiceLimits } from "../../core/practices/practice-limits";
import { choice, optional, quantity, vocabulary } from "../frame";

export const rangeShapeWords = vocabulary<RangeShape>("range shape", {
  triangular: { label: "triangular", also: ["triangle"] },
  pert: { label: "PERT", also: ["beta", "smooth"] },
});

/** The gain of a practice as a person expects it, over doing nothing. */
export const gainRange = {
  lowGain: quantity(practiceLimits.gain, { says: "lowest gain in yield; below 0 where it may cost yield" }),
  likelyGain: quantity(practiceLimits.gain, { says: "likeliest gain" }),
  highGain: quantity(practiceLimits.gain, { says: "highest gain" }),
};

export const cost = quantity(practiceLimits.cost, { says: "cost of the practice, less what it saves" });
export const price = quantity(practiceLimits.price, { says: "price of the crop, less hauling and drying" });
export const acres = quantity(practiceLimits.acres, { says: "acres that the decision is about" });
export const seasons = optional(
  quantity(practiceLimits.seasons, { says: "seasons that the decision stands after the trial; not discounted" }),
  1,
  "1",
);
export const shape = optional(
  choice(rangeShapeWords, { says: "how the range is filled: straight slopes, or a smooth curve with thinner ends" }),
  "triangular",
  "triangular",
);

/** "7 chances in 10", for reading aloud. */
export function chanceWords(chance: number): string {
  const tenths = Math.round(chance * 10);
  if (chance > 0 && chance < 0.05) return "fewer than 1 chance in 20";
  if (chance < 1 && chance > 0.95) return "more than 19 chances in 20";
  return `${tenths} ${tenths === 1 ? "chance" : "chances"} in 10`;
}

/** Whole dollars, or cents where they count. */
export function dollars(usd: number): string {
  const digits = Math.abs(usd) < 100 ? 2 : 0;
  const size = Math.abs(usd).toLocaleString("en-US", { minimumFractionDigits: digits, maximumFractionDigits: digits });
  return `${usd < 0 ? "-" : ""}$${size}`;
}
