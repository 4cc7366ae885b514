import { harvestLimits } from "../../core/harvest/harvest-limits";
import { marketMoisture } from "../../core/harvest/market-moisture";
import { limits } from "../../core/limits";
import { stripYield } from "../../core/trials/strip-yield";
import { trialLimits } from "../../core/trials/trial-limits";
import { bushelWeight } from "../../core/units/bushel-weight";
import { choice, line, optional, percent, quantity, worksheetFunction } from "../frame";
import { grainWords } from "../words";

export const trialStripYield = worksheetFunction({
  name: "TRIALSTRIPYIELD",
  family: "trials",
  summary: "Yield of one strip at market moisture from its scale weight.",
  asks: ["strip weight to bushels", "weigh wagon yield", "yield of a strip at market moisture"],
  args: {
    weight: quantity(trialLimits.weight, { says: "weight of the grain of the strip" }),
    length: quantity(trialLimits.feet, { says: "length harvested" }),
    width: quantity(trialLimits.width, { says: "width harvested, rows times row width" }),
    moisture: percent(limits.moisture, { says: "moisture of the grain, percent of wet weight" }),
    crop: choice(grainWords, { says: "sets the bushel and the market moisture" }),
    marketMoisture: optional(
      percent(harvestLimits.marketMoisture, { says: "moisture at which the buyer pays in full" }),
      null,
      "the market moisture of the crop",
    ),
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield at market moisture" },
  sources: [
    "mn-statutes-239.32",
    "uwex-bushels-test-weight",
    "ufl-ag442-2020",
    "usda-weight-per-bushel",
    "canada-grain-conversions",
    "trade-bushel-weights",
  ],
  example: {
    call: [3400, 600, 20, 19.2, "corn"],
    gives: 210.743,
    because: "by hand: 3,400 × 80.8 / 84.5 / 56 = 58.056 bu on 600 × 20 / 43,560 = 0.27548 ac",
  },
  compute: (values) => {
    const bushel = bushelWeight(values.crop);
    const market = marketMoisture(values.crop, values.marketMoisture);
    const strip = stripYield({
      weightLb: values.weight,
      lengthFt: values.length,
      widthFt: values.width,
      moisturePct: values.moisture,
      marketMoisturePct: market.moisturePct,
      bushelLb: bushel.bushelWeightLb,
    });
    return { ...strip, bushel, market };
  },
  value: (result) => result.yieldBuPerAc,
  working: (result) => [
    line("Ground harvested", result.acres, "ac"),
    line("Weight at market moisture", result.marketWeightLb, "lb"),
    line("Bushel", result.bushel.bushelWeightLb, "lb"),
    line("Grain", result.bushels, "bu"),
    line("Yield", result.yieldBuPerAc, "bu/ac"),
  ],
  cites: (result) => [result.bushel, ...result.market.cited],
});
