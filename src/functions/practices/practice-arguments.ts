import { practiceLimits } from "../../core/practices/practice-limits";
import { line, optional, quantity, type WorkingLine } from "../frame";

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

export const seasonSd = optional(
  quantity(practiceLimits.gainError, {
    says: "how far the gain varies from season to season (SD); a trial of one season is believed that much less",
  }),
  0,
  "0: one season speaks for the others",
);

/** In a working: what one season's trial is taken to say of the others. */
export function seasonLine(seasonSdBuPerAc: number): WorkingLine {
  return seasonSdBuPerAc === 0
    ? line("Season to season", "not counted: the trial's season is taken to speak for the others")
    : line("Season to season (SD)", seasonSdBuPerAc, "bu/ac");
}

/** Whole dollars, or cents where they count. */
export function dollars(usd: number): string {
  const digits = Math.abs(usd) < 100 ? 2 : 0;
  const size = Math.abs(usd).toLocaleString("en-US", { minimumFractionDigits: digits, maximumFractionDigits: digits });
  return `${usd < 0 ? "−" : ""}$${size}`;
}
