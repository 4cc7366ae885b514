import { practiceLimits } from "../../core/practices/practice-limits";
import { optional, quantity } from "../frame";

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

/** Whole dollars, or cents where they count. */
export function dollars(usd: number): string {
  const digits = Math.abs(usd) < 100 ? 2 : 0;
  const size = Math.abs(usd).toLocaleString("en-US", { minimumFractionDigits: digits, maximumFractionDigits: digits });
  return `${usd < 0 ? "-" : ""}$${size}`;
}
