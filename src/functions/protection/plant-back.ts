import { dateText } from "../../core/units/sheet-date";
import { plantBack, plantBackLimits, type LabelInterval } from "../../core/protection/plant-back";
import { refuseArgument } from "../../core/fault";
import { line, quantity, worksheetFunction, type OneArgument } from "../frame";
import { sheetDate } from "../sheet-date";
import { labelLaw } from "../cautions";

const inDays = quantity(plantBackLimits.days, {
  says: "interval on the label for the crop to be planted: days, or a text such as 18 months",
});
const inMonths = quantity(plantBackLimits.months, { says: "months" });

const intervalDays: OneArgument<LabelInterval> = {
  ...inDays,
  read(cell, argument) {
    const stated = typeof cell === "string" ? /^\s*([\d.]+)\s*(day|month|mo|d)s?\.?\s*$/i.exec(cell) : null;
    if (!stated) return { days: inDays.read(cell, argument) };
    const amount = Number(stated[1]);
    if (/^d/i.test(stated[2] ?? "")) return { days: inDays.read(amount, argument) };
    const months = inMonths.read(amount, argument);
    if (!Number.isInteger(months)) {
      refuseArgument(argument, `${months} months is no whole number: give the days.`);
    }
    return { months };
  },
};

export const plantBackDays = worksheetFunction({
  name: "PLANTBACKDAYS",
  family: "protection",
  summary: "Days by which a planting date falls short of a label's rotation interval.",
  asks: ["when can I plant after this herbicide", "plant-back interval", "rotation restriction"],
  args: {
    applied: sheetDate({ says: "date of the application" }),
    intervalDays,
    plant: sheetDate({ says: "date of planting" }),
  },
  returns: {
    shape: "one",
    unit: "days",
    says: "above 0: days too early; 0 or below: the interval is met, with so many days to spare",
  },
  sources: ["label-law"],
  cautions: [
    labelLaw,
    "Intervals are not kept here: take each from the label of the product at hand, with its further conditions (rain, soil pH, rate, tillage, the crop before). Some crops may not follow in the same season whatever the days.",
  ],
  example: {
    call: ["2027-06-10", 120, "2027-09-28"],
    gives: 10,
    because: "by hand: 10 June + 120 days is 8 October; 28 September is 10 days short",
  },
  compute: (values) =>
    plantBack({ appliedDate: values.applied, interval: values.intervalDays, plantDate: values.plant }),
  value: (result) => result.daysShort,
  working: (result) => [
    line("Days from application to planting", result.daysSince, "days"),
    line("First day the interval allows", dateText(result.firstDate)),
    result.daysShort > 0
      ? line("Too early by", result.daysShort, "days")
      : line("Interval met, days to spare", -result.daysShort, "days"),
    line("Still to look up", "the label's other conditions: rain, soil pH, rate, tillage"),
  ],
});
