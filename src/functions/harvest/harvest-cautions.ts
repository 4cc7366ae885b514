/** Said at the functions whose work they concern. */
export const binEntry =
  "Flowing or bridged grain buries a person in seconds: never enter a bin while grain moves, lock out the unloader first, and follow local bin-entry rules with a trained helper outside.";
export const spoiledGrain =
  "Spoiled grain makes dust and gas that harm lungs: keep out, and ask before you disturb it.";
export const combine =
  "Stop the machine, shut off the engine and wait until every part stands still before you count behind or near it.";
export const dryerFire =
  "Heated dryers can burn and leak gas: keep them clean and watched, and leave gas and wiring to licensed people.";
export const treatedSeed = "Treated seed never goes into grain, feed or oil: keep leftovers out of bins and trucks.";
export const buyersTerms = "The buyer's scale ticket and discount schedule decide what is paid.";
