import { capacityNeed as capacityNeedOf } from "../../core/machinery/capacity-need";
import { fieldCapacity as fieldCapacityOf, type FieldEfficiency } from "../../core/machinery/field-capacity";
import { latenessCost as latenessCostOf } from "../../core/machinery/lateness-cost";
import { machineryLimits } from "../../core/machinery/machinery-limits";
import { bestDays } from "../../reference/machinery/best-days";
import type { FieldMachineKey } from "../../reference/machinery/machines";
import { choice, line, optional, percent, quantity, worksheetFunction } from "../frame";
import { orWord } from "../number-or-word";
import { checkLines } from "../check-lines";
import { bestDayWords, fieldMachineWords } from "./cover-words";
import { machinery } from "../cautions";

export const fieldCapacity = worksheetFunction({
  name: "FIELDCAPACITY",
  family: "cover",
  summary: "Acres that a machine works in an hour.",
  asks: ["how many acres an hour", "how long does it take to plant", "field efficiency"],
  args: {
    width: quantity(machineryLimits.width, { says: "working width; rows times row width for row machines" }),
    mph: quantity(machineryLimits.mph, { says: "speed in the field" }),
    efficiency: orWord<FieldMachineKey, FieldEfficiency>(
      percent(machineryLimits.efficiency, {
        says: "share of time and width that does work, or a machine whose typical share it is",
      }),
      fieldMachineWords,
      { ofNumber: (efficiencyPct) => ({ efficiencyPct }), ofWord: (machine) => ({ machine }) },
    ),
  },
  returns: { shape: "one", unit: "ac/h", says: "acres worked in an hour" },
  sources: ["isu-pm696-2001", "asabe-d497"],
  example: {
    call: [16.25, 5.5, 83],
    gives: 8.99167,
    tolerance: 0.0001,
    because: "by hand: 16.25 × 5.5 × 0.83 / 8.25; printed as 9.0 for 16 ft 3 in",
  },
  cautions: [machinery],
  compute: (values) => fieldCapacityOf({ widthFt: values.width, mph: values.mph, efficiency: values.efficiency }),
  value: (result) => result.acPerHour,
  working: (result) => [
    line("Without turns, fills and overlap", result.fullAcPerHour, "ac/h"),
    line("Field efficiency", result.efficiencyPct, "%"),
    line("Worked in an hour", result.acPerHour, "ac/h"),
    line("Time for an acre", result.hoursPerAc, "h/ac"),
    line("In ten hours", result.acPerHour * 10, "ac"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

export const capacityNeed = worksheetFunction({
  name: "CAPACITYNEED",
  family: "cover",
  summary: "Acres an hour that a job must run to be done in the days there are.",
  asks: ["how big a planter do I need", "can I plant in ten days", "machine size for my acres"],
  args: {
    acres: quantity(machineryLimits.acres, { says: "acres to do" }),
    days: quantity(machineryLimits.days, { says: "days fit for field work" }),
    hoursPerDay: quantity(machineryLimits.hoursPerDay, { says: "hours worked in a day" }),
    inField: optional(
      percent(machineryLimits.inField, { says: "share of those hours in the field, roads and waiting taken off" }),
      100,
      "100",
    ),
  },
  returns: { shape: "one", unit: "ac/h", says: "capacity needed; FIELDCAPACITY gives that of a machine" },
  sources: ["isu-pm696-2001"],
  example: { call: [800, 10, 10, 80], gives: 10, because: "by hand: 800 / (10 × 10 × 0.80)" },
  cautions: [machinery],
  compute: (values) =>
    capacityNeedOf({
      acres: values.acres,
      days: values.days,
      hoursPerDay: values.hoursPerDay,
      inFieldPct: values.inField,
    }),
  value: (result) => result.acPerHour,
  working: (result) => [
    line("Hours in the field", result.fieldHours, "h"),
    line("Acres a day", result.acPerDay, "ac/day"),
    line("Needed", result.acPerHour, "ac/h"),
  ],
});

export const latenessCost = worksheetFunction({
  name: "LATENESSCOST",
  family: "cover",
  summary: "Crop lost in a year because a job takes days and not every acre gets the best one.",
  asks: ["what do acres planted late cost", "is a bigger planter worth it", "timeliness cost"],
  args: {
    acres: quantity(machineryLimits.acres, { says: "acres to do" }),
    yield: quantity(machineryLimits.yield, { says: "yield on the best day" }),
    price: quantity(machineryLimits.cropPrice, { says: "price of a unit of the yield" }),
    lossPerDay: percent(machineryLimits.lossPerDay, {
      says: "yield lost for each day off the best one: your own figure or a planting-date table",
      smallIsUsual: true,
    }),
    acresPerHour: quantity(machineryLimits.acresPerHour, { says: "FIELDCAPACITY of the machine" }),
    hoursPerDay: quantity(machineryLimits.hoursPerDay, { says: "hours worked on a fit day" }),
    workableDays: percent(machineryLimits.workableDays, { says: "share of days fit for field work in that season" }),
    bestDay: choice(bestDayWords, { says: "where the best day falls within the work: at one end or in the middle" }),
  },
  returns: { shape: "one", unit: "$/yr", says: "worth of the crop lost" },
  sources: ["asabe-ep496"],
  example: {
    call: [600, 190, 4.35, 0.5, 12, 10, 50, "at one end"],
    gives: 12_397.5,
    because: "by hand: 600 ac take 600 / (12 × 10 × 0.5) = 10 days; 0.005 × 600 × 190 × 4.35 × 10 / 2",
  },
  compute: (values) =>
    latenessCostOf({
      acres: values.acres,
      yieldPerAc: values.yield,
      priceUsd: values.price,
      lossPctPerDay: values.lossPerDay,
      acresPerHour: values.acresPerHour,
      hoursPerDay: values.hoursPerDay,
      workableDaysPct: values.workableDays,
      bestDay: values.bestDay,
    }),
  value: (result) => result.costUsd,
  working: (result, values) => [
    line("Days from first acre to last", result.spanDays, "days"),
    line("Lost in a year", result.costUsd, "$/yr"),
    line("Lost on an acre", result.costUsdPerAc, "$/ac"),
    line("One more acre an hour would save", result.nextAcrePerHourUsd, "$/yr"),
    ...checkLines([bestDays[values.bestDay]]),
  ],
  everyRow: () => Object.values(bestDays),
});
