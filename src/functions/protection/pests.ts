import {
  pestActionLevel as pestActionLevelOf,
  pestDays as pestDaysOf,
  type PestGrowth,
} from "../../core/protection/pest-growth";
import { pestInjuryLevel as pestInjuryLevelOf } from "../../core/protection/pest-injury-level";
import { pestLimits } from "../../core/protection/pest-limits";
import { pests, type PestKey } from "../../reference/protection/pests";
import { line, percent, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { orWord } from "../number-or-word";
import { checkLines } from "../check-lines";
import { pestWords } from "./protection-words";
import { labelLaw, scoutFirst } from "../cautions";

const dailyGrowth = orWord<PestKey, PestGrowth>(
  quantity(pestLimits.growth, {
    says: "growth of the population, percent a day (10 means a tenth more each day), or a pest with a published doubling time",
  }),
  pestWords,
  { ofNumber: (pctPerDay) => ({ pctPerDay }), ofWord: (pest) => ({ pest }) },
);
const injuryLevel = quantity(pestLimits.injuryLevel, { says: "pests where loss equals cost, as you count them" });

export const pestInjuryLevel = worksheetFunction({
  name: "PESTINJURYLEVEL",
  family: "protection",
  summary: "Number of pests whose preventable loss equals the cost of control.",
  asks: ["when does spraying insects pay", "economic injury level", "economic threshold at today's price"],
  args: {
    cost: quantity(pestLimits.cost, { says: "cost of control, product and pass" }),
    price: quantity(pestLimits.price, { says: "price of the crop" }),
    lossPerPest: quantity(pestLimits.lossPerPest, {
      says: "bushels an acre lost to one pest per plant, foot of row or sweep: the share lost times the yield",
    }),
    control: percent(pestLimits.control, { says: "share of the loss that control prevents" }),
  },
  returns: { shape: "one", unit: "pests", says: "pests, counted the way the loss is" },
  sources: ["pedigo-injury-level", "sdsu-leaf-beetle"],
  cautions: [labelLaw, scoutFirst],
  example: {
    call: [10, 5, 0.05, 100],
    gives: 40,
    because: "printed: $10, $5 a bushel, 40 bu × 0.00125: 40 beetles a foot",
  },
  compute: (values) =>
    pestInjuryLevelOf({
      costUsdPerAc: values.cost,
      priceUsdPerBu: values.price,
      lossBuPerAcEach: values.lossPerPest,
      controlPct: values.control,
    }),
  value: (result) => result.injuryLevel,
  working: (result) => [
    line("One pest costs", result.lossUsdPerAcEach, "$/ac"),
    line("Of that control saves", result.savedUsdPerAcEach, "$/ac"),
    line("Injury level", result.injuryLevel, "pests"),
    line("Turning on", "it rises in step with cost and falls in step with price"),
  ],
});

export const pestActionLevel = worksheetFunction({
  name: "PESTACTIONLEVEL",
  family: "protection",
  summary: "Number of pests at which to act when the sprayer needs some days to come.",
  asks: ["economic threshold", "when to order the sprayer", "pest threshold with lead time"],
  args: {
    injuryLevel,
    dailyGrowth,
    daysToSpray: quantity(pestLimits.days, { says: "days from the count to the spray" }),
  },
  returns: { shape: "one", unit: "pests", says: "pests at which to act" },
  sources: ["pedigo-injury-level", "ragsdale-2007"],
  cautions: [labelLaw, scoutFirst],
  example: { call: [400, 100, 3], gives: 50, because: "by hand: doubling every day, 400 / 2³" },
  compute: (values) =>
    pestActionLevelOf({
      injuryLevel: values.injuryLevel,
      growth: values.dailyGrowth,
      daysToSpray: values.daysToSpray,
    }),
  value: (result) => result.actionLevel,
  working: (result) => [
    line("Injury level", result.injuryLevel, "pests"),
    ...growthLines(result),
    line("Act at", result.actionLevel, "pests"),
  ],
  cites: (result) => (result.published ? [result.published] : []),
});

export const pestDays = worksheetFunction({
  name: "PESTDAYS",
  family: "protection",
  summary: "Days until a growing pest reaches the injury level.",
  asks: ["how many days until aphids reach the limit", "how long can I wait to spray"],
  args: { count: quantity(pestLimits.count, { says: "pests now, as you count them" }), injuryLevel, dailyGrowth },
  returns: { shape: "one", unit: "days", says: "days left; 0 when the level is reached" },
  sources: ["pedigo-injury-level", "ragsdale-2007"],
  cautions: [labelLaw, scoutFirst],
  example: {
    call: [250, 674, "soybean aphid"],
    gives: 9.73,
    because: "by hand: 6.8 days × log2(674 / 250) = 6.8 × 1.4308",
  },
  compute: (values) => pestDaysOf({ count: values.count, injuryLevel: values.injuryLevel, growth: values.dailyGrowth }),
  value: (result) => result.days,
  working: (result) => [
    ...growthLines(result),
    line("Days left", result.days, "days"),
    ...(result.isReached ? [line("Reached", "the count is at the injury level or above it")] : []),
  ],
  cites: (result) => (result.published ? [result.published] : []),
});

function growthLines(growth: ReturnType<typeof pestActionLevelOf> | ReturnType<typeof pestDaysOf>): WorkingLine[] {
  const of = growth.published ? `, ${pests[growth.published.pest].label}` : "";
  return [
    line(`Growth${of}`, growth.pctPerDay, "% a day"),
    line("Numbers double in", growth.doublingDays ?? "never", growth.doublingDays === null ? "" : "days"),
    ...checkLines(growth.published ? [growth.published] : []),
  ];
}
