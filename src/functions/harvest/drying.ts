import { dryingCost as dryingCostOf, type GasUse } from "../../core/harvest/drying-cost";
import { dryingFuel as dryingFuelOf, type DryerUse } from "../../core/harvest/drying-fuel";
import { harvestLimits } from "../../core/harvest/harvest-limits";
import type { DryerKey, GasRuleKey } from "../../reference/harvest/drying";
import { choice, line, optional, percent, quantity, worksheetFunction } from "../frame";
import { orWord } from "../number-or-word";
import { checkLines } from "../check-lines";
import { grainWords } from "../words";
import { dryerWords, fuelWords, gasRuleWords } from "./harvest-words";
import { dryerFire } from "../cautions";

const bushels = quantity(harvestLimits.bushels, { says: "wet bushels dried: pounds over the bushel weight" });

const fuelPerPoint = optional(
  orWord<GasRuleKey, GasUse>(
    quantity(harvestLimits.fuelPerPoint, {
      says: "gallons of LP gas for a bushel and point, or a published rule: usual (0.02), high temperature (0.022), Iowa average (0.018), low (0.010), high (0.025)",
    }),
    gasRuleWords,
    { ofNumber: (galPerBuPoint) => ({ galPerBuPoint }), ofWord: (rule) => ({ rule }) },
  ),
  { rule: "usual" } as const,
  "usual: 0.02 gallons for a bushel and point",
);

export const dryingCost = worksheetFunction({
  name: "DRYINGCOST",
  family: "harvest",
  summary: "Cost of drying grain with LP gas.",
  asks: ["what does drying cost", "propane cost to dry corn", "drying cost per point"],
  args: {
    points: quantity(harvestLimits.points, { says: "points of moisture taken out: 25 to 15 % is 10" }),
    bushels,
    fuelPrice: quantity(harvestLimits.fuelPrice, { says: "price of LP gas" }),
    fuelPerPoint,
    fanPower: optional(quantity(harvestLimits.fanPower, { says: "electricity of fans and augers" }), 0, "0: fuel only"),
    powerPrice: optional(
      quantity(harvestLimits.powerPrice, { says: "price of electricity" }),
      null,
      "asked for when fanPower is given",
    ),
    otherCost: optional(
      quantity(harvestLimits.costPerBushel, { says: "labor, repairs and ownership of the dryer" }),
      0,
      "0: fuel and power only",
    ),
  },
  returns: { shape: "one", unit: "$", says: "cost for all the bushels" },
  sources: ["ndsu-drying", "isu-sdsu-drying-rule", "isu-ic-492-20"],
  cautions: [dryerFire],
  example: {
    call: [10, 1000, 1.9, 0.022],
    gives: 418,
    because: "by hand: 10 × 0.022 × 1.90 = 0.418 $/bu (printed 42 cents) × 1,000",
  },
  compute: (values) =>
    dryingCostOf({
      points: values.points,
      bushels: values.bushels,
      fuelPriceUsdPerGal: values.fuelPrice,
      gasUse: values.fuelPerPoint,
      fanKwhPerBu: values.fanPower,
      powerPriceUsdPerKwh: values.powerPrice,
      otherUsdPerBu: values.otherCost,
    }),
  value: (result) => result.costUsd,
  working: (result) => [
    line("LP gas for a bushel and point", result.galPerBuPoint, "gal"),
    line("LP gas", result.gallons, "gal"),
    line("Fuel for a bushel and point", result.fuelUsdPerBuPoint * 100, "cents"),
    line("Fuel", result.fuelUsdPerBu, "$/bu"),
    line("Electricity", result.fanUsdPerBu, "$/bu"),
    line("All costs", result.costUsdPerBu, "$/bu"),
    line("For all bushels", result.costUsd, "$"),
  ],
  cites: (result) => result.cited,
});

const dryer = optional(
  orWord<DryerKey, DryerUse>(
    quantity(harvestLimits.energyPerPound, {
      says: "heat for a pound of water, or a kind of dryer: high temperature (2,500), heat recovery (1,841), old batch (3,000)",
    }),
    dryerWords,
    { ofNumber: (btuPerLb) => ({ btuPerLb }), ofWord: (key) => ({ dryer: key }) },
  ),
  { dryer: "highTemperature" } as const,
  "high temperature: 2,500 BTU for a pound of water",
);

export const dryingFuel = worksheetFunction({
  name: "DRYINGFUEL",
  family: "harvest",
  summary: "Fuel that drying grain takes, from the water to take out.",
  asks: [
    "how much propane to dry corn",
    "gallons of LP for drying",
    "natural gas for the dryer",
    "pounds of water to remove",
  ],
  args: {
    bushels,
    moisture: percent(harvestLimits.moisture, { says: "moisture of the wet grain" }),
    crop: choice(grainWords, { says: "sets the bushel weight and the market moisture" }),
    fuel: choice(fuelWords, { says: "LP gas, natural gas or electricity" }),
    dryer,
    targetMoisture: optional(
      percent(harvestLimits.marketMoisture, { says: "moisture to dry to" }),
      null,
      "the usual market moisture of the crop",
    ),
  },
  returns: {
    shape: "one",
    unit: "gal, cu ft or kWh",
    says: "gallons of LP gas, cubic feet of natural gas or kilowatt-hours",
  },
  sources: ["dry-matter-balance", "dryer-energy", "fuel-heat-content", "farm-dryer-audit-2010"],
  cautions: [dryerFire],
  example: {
    call: [1000, 25.5, "corn", "LP gas"],
    gives: 181.072,
    tolerance: 0.001,
    because: "by hand: 56,000 × 10 / 84.5 = 6,627.219 lb of water × 2,500 / 91,500",
  },
  compute: (values) =>
    dryingFuelOf({
      wetBu: values.bushels,
      moisturePct: values.moisture,
      grain: values.crop,
      fuel: values.fuel,
      dryerUse: values.dryer,
      targetMoisturePct: values.targetMoisture,
    }),
  value: (result) => result.fuel,
  working: (result) => [
    line("Water to take out", result.waterLb, "lb"),
    line("Heat for a pound of water", result.btuPerLb, "BTU"),
    line("Heat in all", result.energyBtu, "BTU"),
    line(`Heat in a ${result.fuelUnit}`, result.btuPerUnit, "BTU"),
    line("Fuel", result.fuel, result.fuelUnit),
    line("Water for each dry bushel", result.waterLbPerDryBu, "lb"),
    line("Fuel for each dry bushel", result.fuelPerDryBu, result.fuelUnit),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});
