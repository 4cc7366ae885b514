/**
 * What is said with numbers where work can hurt someone, break a rule or mislead: one wording each for the functions
 * of several files. A caution that only one file needs stands there.
 */

export const labelLaw =
  "The label is the law. It sets crop, rate, growth stage, most in a year, protective gear and re-entry, days before harvest or grazing, buffers, wind and heat; a restricted-use product needs a licensed applicator, and registration differs by state and year. This is arithmetic and picks no product.";
export const mixingLaw =
  "Which products may share a tank, and in what order they go in, stands on their labels. Try a new mix in a jar first, and clean the tank out as the labels say.";
export const scoutFirst =
  "Scout the whole field, and look at natural enemies and the days left to harvest before anything is sprayed.";
export const controlIsTheLabels =
  "A group says how an ingredient works in a plant, not which weeds it controls: that stands on the label and in local ratings.";

export const treatedSeed =
  "Treated seed never goes into grain, feed or oil: keep leftovers out of bins and trucks. Its label says what to wear and how to dispose of them.";

export const ammonia =
  "Anhydrous ammonia can blind, burn and kill: protective gear, water at hand, trained people, and the rules for its tanks and hoses.";
export const nutrientRules =
  "Follow your state's nutrient management rules, phosphorus index and plan: rates below a guide's, timing and setbacks from water and wells can be set by law.";
export const seedTouch =
  "No urea, UAN, ammonium thiosulfate or boron in touch with seed, whatever the salt limit says. The product's label comes first: many forbid placing it with seed.";
export const testsVary = "A planning figure: soil tests vary in space and season, so trust a trend over several years.";

export const machinery =
  "Keep shields on and the rollover bar up; stop the engine and wait until every part stands still before you reach in, clear, adjust or count near it. Nobody near a turning PTO shaft.";
export const blockedUp =
  "Lower an implement or block it up before you reach or work under it: never trust the hydraulics alone.";
export const averageMachine =
  "Repair and value curves describe average machines within their life; they do not predict one machine. Prices of your dealer and your own records come first.";

export const digging =
  "Call before you dig, and wait until buried lines are marked; trench walls cave in: never enter a trench without shoring or a box.";
export const drainageLaw =
  "Drainage law, outlet rights and wetland rules come first: ask the drainage authority and the USDA office before any work.";
export const drainageDesign =
  "An estimate for planning: a surveyed grade, the local drainage guide and, where the law asks for it, a licensed designer decide.";

export const binEntry =
  "Flowing or bridged grain buries a person in seconds: never enter a bin while grain moves, lock out the unloader first, and follow local bin-entry rules with a trained helper outside.";
export const spoiledGrain =
  "Spoiled grain makes dust and gas that harm lungs: keep out, and ask before you disturb it.";
export const dryerFire =
  "Heated dryers can burn and leak gas: keep them clean and watched, and leave gas and wiring to licensed people.";
export const buyersTerms = "The buyer's scale ticket and discount schedule decide what is paid.";

export const stripsNotPoints =
  "One strip is one observation, however many points the yield monitor wrote; weigh strips or average each before entering it.";
export const oneSeason = "A trial speaks for its field and season. Not clearly different is not the same as no effect.";
export const winnersShrink =
  "The best of several looks better than it is, partly by luck; test it again before counting on its whole gain.";

export const practiceCautions = [
  "A profitable average is no promise: the gain is a belief, and people set their lowest and highest too close together.",
  "Labels, local rules and licensed practice come before any practice listed here.",
];
