import { plantingDelay as plantingDelayOf } from "../../core/seed/planting-delay";
import { seedLimits } from "../../core/seed/seed-limits";
import { plantingDelays } from "../../reference/seed/planting-delay";
import { sheetDate } from "../sheet-date";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { cropWords } from "../words";
import { delayRegionWords } from "./seed-words";

export const plantingDelay = worksheetFunction({
  name: "PLANTINGDELAY",
  family: "seed",
  summary: "Bushels lost for one more day of planting delay on a date, by region.",
  asks: ["what does a day of late planting cost", "bushels lost per day of delay", "planting date response"],
  args: {
    crop: choice(cropWords, { says: "corn or soybean" }),
    plantingDate: sheetDate({ says: "day that is asked about; the year does not matter" }),
    region: choice(delayRegionWords, { says: "where the figures come from" }),
    yield: optional(
      quantity(seedLimits.fullYield, { says: "yield planted in good time" }),
      null,
      "waited for where the source prints percent",
    ),
  },
  returns: { shape: "one", unit: "bu/ac a day", says: "lost for one more day" },
  sources: [
    "nafziger-2013",
    "wisconsin-a117",
    "illinois-bulletin-2009",
    "umn-naeve-2017",
    "missouri-reis-2023",
    "virginia-soybean-replant",
    "unl-soybean-dates",
  ],
  example: {
    call: ["corn", "2026-05-15", "Illinois", 200],
    gives: 1.4,
    because: "printed: 0.7 % a day from May 11 to 20; 0.7 % of 200",
  },
  compute: (values) =>
    plantingDelayOf({
      crop: values.crop,
      plantedOn: values.plantingDate,
      region: values.region,
      fullYieldBu: values.yield,
    }),
  value: (result) => result.buPerAcPerDay,
  working: (result) => [
    line("One more day costs", result.buPerAcPerDay, "bu/ac"),
    ...(result.pctPerDay === null ? [] : [line("Of the full yield", result.pctPerDay, "%")]),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
  everyRow: () => plantingDelays.rows,
});
