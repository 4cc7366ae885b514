import { heatLimits } from "../../core/seed/heat-limits";
import { heatUnits as heatUnitsOf } from "../../core/seed/heat-units";
import { stageDays as stageDaysOf } from "../../core/seed/stage-days";
import { cornTemperatures } from "../../reference/seed/corn-heat";
import { line, list, listWithGaps, optional, quantity, worksheetFunction } from "../frame";

const temperatures = (says: string) =>
  listWithGaps(quantity(heatLimits.temperature, { says: "temperatures" }), { says });

export const heatUnits = worksheetFunction({
  name: "HEATUNITS",
  family: "seed",
  summary: "Growing degree units of one day or a run of days, by corn's 86/50 rule or another base.",
  asks: ["growing degree days", "GDD", "GDU since planting", "heat units"],
  args: {
    maxTemps: temperatures("highest temperature of each day, from the day after planting"),
    minTemps: temperatures("lowest temperature of each day, in the same order"),
    base: optional(quantity(heatLimits.base, { says: "temperature below which the crop stands still" }), null, "50"),
    cap: optional(
      quantity(heatLimits.cap, { says: "temperature above which more heat does nothing; days are held between" }),
      null,
      "86 on a base of 50; on another base none, and a day's mean less the base counts",
    ),
  },
  returns: { shape: "one", unit: "heat units", says: "sum over the days, °F" },
  sources: ["osu-agf-101", "umn-coulter-2021"],
  example: {
    call: [
      [[80], [60], [66]],
      [[60], [40], [50]],
    ],
    gives: 33,
    because: "printed: 80/60 gives 20, 60/40 gives 5, 66/50 gives 8; 20 + 5 + 8",
  },
  compute: (values) =>
    heatUnitsOf({ maxTemps: values.maxTemps, minTemps: values.minTemps, base: values.base, cap: values.cap }),
  value: (result) => result.heatUnits,
  working: (result) => [
    line("Days", result.days, "days"),
    line("Base", result.base, "°F"),
    line("Cap", result.cap ?? "none", result.cap === null ? "" : "°F"),
    line("A day on average", result.meanPerDay, "heat units"),
    line("Heat units", result.heatUnits),
  ],
  cites: ({ base, cap }) => (base === cornTemperatures.base && cap === cornTemperatures.cap ? [cornTemperatures] : []),
  everyRow: () => [cornTemperatures],
});

export const stageDays = worksheetFunction({
  name: "STAGEDAYS",
  family: "seed",
  summary: "Days until so many heat units are reached, at a steady figure or along a list of days.",
  asks: ["days to emergence", "when will corn reach black layer", "how many days to the next leaf"],
  args: {
    heatUnitsNeeded: quantity(heatLimits.heatUnits, { says: "heat units to go" }),
    dailyHeatUnits: list(quantity(heatLimits.dailyHeatUnits, { says: "heat units of a day" }), {
      says: "heat units of a day, one figure for all or a list from the first day on; HEATUNITS gives them",
    }),
  },
  returns: { shape: "one", unit: "days", says: "whole days" },
  sources: ["umn-coulter-2021"],
  example: { call: [115, 16], gives: 8, because: "by hand: 115 / 16 = 7.2; the eighth day reaches it" },
  compute: ({ heatUnitsNeeded, dailyHeatUnits }) => stageDaysOf({ needed: heatUnitsNeeded, daily: dailyHeatUnits }),
  value: (result) => result.days,
  working: (result, { heatUnitsNeeded }) => [
    line("To go", heatUnitsNeeded, "heat units"),
    line("Days", result.days, "days"),
    line("By then", result.reached, "heat units"),
  ],
});
