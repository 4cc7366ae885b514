import { harvestLimits } from "../../core/harvest/harvest-limits";
import {
  equilibriumMoisture as equilibriumMoistureOf,
  safeMoisture as safeMoistureOf,
} from "../../core/harvest/keeping-moisture";
import { storageDays as storageDaysOf } from "../../core/harvest/storage-days";
import { storageUsed as storageUsedOf } from "../../core/harvest/storage-used";
import { storageTables } from "../../reference/harvest/storage";
import { choice, line, list, optional, percent, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { storageTableWords } from "./harvest-words";
import { binEntry, spoiledGrain } from "../cautions";

const grainMoisture = percent(harvestLimits.storageMoisture, { says: "moisture of the corn" });
const grainTemperature = quantity(harvestLimits.storageTemperature, { says: "temperature of the corn itself" });

export const storageDays = worksheetFunction({
  name: "STORAGEDAYS",
  family: "harvest",
  summary: "Days that shelled corn keeps at a moisture and temperature.",
  asks: ["how long will wet corn keep", "safe storage time", "how long can corn wait for the dryer"],
  args: {
    moisture: grainMoisture,
    temperature: grainTemperature,
    table: optional(
      choice(storageTableWords, { says: "one published table: Midwest, North Dakota or Arkansas" }),
      null,
      "the shortest time of all three",
    ),
  },
  returns: {
    shape: "one",
    unit: "days",
    says: "days until half a percent of the dry matter is lost, with no days used before",
  },
  sources: ["midwest-storage-time", "ndsu-storage-2010", "arkansas-storage-2014"],
  cautions: [binEntry, spoiledGrain],
  example: {
    call: [20, 60],
    gives: 25,
    because: "printed: 25 days at 20 % and 60 °F by North Dakota, 29 by the Midwest table",
  },
  compute: ({ moisture, temperature, table }) =>
    storageDaysOf({ moisturePct: moisture, temperatureF: temperature }, table),
  value: (result) => result.days,
  working: (result) => [
    ...result.read.map(({ table, days }) => line(`At most, by the ${storageTables[table].label} table`, days, "days")),
    line("Taken", storageTables[result.governing].label),
    line("Days it keeps", result.days, "days"),
    line("Mind", "10 °F cooler about doubles the time; broken kernels and days already used shorten it"),
  ],
  cites: (result) => result.cited,
});

export const storageUsed = worksheetFunction({
  name: "STORAGEUSED",
  family: "harvest",
  summary: "Share of its storage life that corn has used, period by period.",
  asks: ["how much storage life is left", "wet holding then drying", "is my stored corn still safe"],
  args: {
    days: list(quantity(harvestLimits.daysStored, { says: "days" }), { says: "days of each period" }),
    moistures: list(grainMoisture, { says: "moisture in each period, or one for all" }),
    temperatures: list(grainTemperature, { says: "grain temperature in each period, or one for all" }),
  },
  returns: { shape: "one", unit: "%", says: "100 or more: half a percent of the dry matter is gone" },
  sources: ["midwest-storage-time", "ndsu-storage-2010", "arkansas-storage-2014"],
  cautions: [binEntry, spoiledGrain],
  example: {
    call: [[[5], [70]], [[20], [16]], 60],
    gives: 78.3333,
    tolerance: 0.001,
    because: "by hand: 5 / 25 + 70 / 120 = 0.20 + 0.58333, by the North Dakota times",
  },
  compute: ({ days, moistures, temperatures }) =>
    storageUsedOf({ days, moisturesPct: moistures, temperaturesF: temperatures }),
  value: (result) => result.usedPct,
  working: (result) => [
    ...result.periods
      .slice(0, 20)
      .map(({ days, allowedDays }, index) => line(`Period ${index + 1}: ${days} days of`, allowedDays, "days")),
    line("Used", result.usedPct, "%"),
    line("Left", Math.max(0, 100 - result.usedPct), "%"),
    ...(result.isOver ? [line("Look", "the storage life is used up: check the grain and move it first")] : []),
  ],
  cites: (result) => result.cited,
});

export const safeMoisture = worksheetFunction({
  name: "SAFEMOISTURE",
  family: "harvest",
  summary: "Moisture at which sound corn keeps for a number of months.",
  asks: ["how dry to store corn", "moisture for long storage"],
  args: { months: quantity(harvestLimits.months, { says: "months in store" }) },
  returns: { shape: "one", unit: "%", says: "highest moisture for that time, cooled and aerated" },
  sources: ["purdue-storage-moisture"],
  cautions: [binEntry],
  example: { call: [9], gives: 14, because: "printed: 15.5 % to 6 months, 14 % to 12, 13 % beyond" },
  compute: ({ months }) => safeMoistureOf(months),
  value: (row) => row.moisturePct,
  working: (row) => [
    line("Good for", row.monthsAtMost === null ? "more than 12" : `up to ${row.monthsAtMost}`, "months"),
    line("Highest moisture", row.moisturePct, "%"),
  ],
  cites: (row) => [row],
});

export const equilibriumMoisture = worksheetFunction({
  name: "EQUILIBRIUMMOISTURE",
  family: "harvest",
  summary: "Moisture that shelled corn comes to in air that stays as it is.",
  asks: ["will the fan dry my corn", "how dry will air get corn", "aeration and humidity"],
  args: {
    humidity: percent(harvestLimits.humidity, { says: "relative humidity of the air" }),
    temperature: quantity(harvestLimits.airTemperature, { says: "temperature of the air" }),
  },
  returns: { shape: "one", unit: "%", says: "moisture of the corn, percent of wet weight" },
  sources: ["asabe-d245"],
  example: {
    call: [65, 70],
    gives: 13.508,
    because:
      "by hand: 70 °F is 21.111 °C; 0.430783 × 51.316 / 312.4 = 0.070763; -ln / 0.16958 = 15.617 % of dry weight; 100 × 15.617 / 115.617 = 13.508",
  },
  compute: ({ humidity, temperature }) => equilibriumMoistureOf(humidity, temperature),
  value: (result) => result.wetBasisPct,
  working: (result) => [
    line("Air", result.temperatureC, "°C"),
    line("Of dry weight", result.dryBasisPct, "%"),
    line("Of wet weight", result.wetBasisPct, "%"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});
