import { harvestLimits } from "../../core/harvest/harvest-limits";
import { sellWetOrDry as sellWetOrDryOf } from "../../core/harvest/sell-wet-or-dry";
import { choice, line, optional, percent, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { grainWords } from "../words";
import { buyersTerms, dryerFire } from "../cautions";

const perBushel = (says: string) =>
  optional(quantity(harvestLimits.costPerBushel, { says }), null, "this way is left out");

export const sellWetOrDry = worksheetFunction({
  name: "SELLWETORDRY",
  family: "harvest",
  summary: "Sell grain wet, let the elevator dry it, or dry it at home: what each leaves.",
  asks: ["sell corn wet or dry it", "should I dry my own corn", "elevator drying or my own dryer"],
  args: {
    bushels: quantity(harvestLimits.bushels, { says: "wet bushels: pounds over the bushel weight" }),
    moisture: percent(harvestLimits.moisture, { says: "moisture of the wet grain" }),
    crop: choice(grainWords, { says: "sets the market moisture" }),
    price: quantity(harvestLimits.price, { says: "price of a bushel at market moisture" }),
    wetDiscount: perBushel("what the buyer takes off the price of each wet bushel at this moisture"),
    elevatorShrink: optional(
      quantity(harvestLimits.shrinkPerPoint, { says: "the elevator's shrink for each point" }),
      null,
      "asked for when elevatorCharge is given",
    ),
    elevatorCharge: perBushel("the elevator's charge for drying each wet bushel, all points together"),
    homeCost: perBushel("cost of drying each wet bushel at home, all points together; DRYINGCOST gives it"),
    handlingLoss: optional(
      percent(harvestLimits.handlingLoss, { says: "loss in dust and fines when dried at home", smallIsUsual: true }),
      null,
      "0.5",
    ),
    marketMoisture: optional(
      percent(harvestLimits.marketMoisture, { says: "moisture at which the buyer pays a full bushel" }),
      null,
      "the usual one of the crop",
    ),
  },
  returns: {
    shape: "table",
    unit: "",
    says: "a row for each way whose terms are given: bushels paid, price, income, cost, what is left, what is left of a wet bushel, and which is best",
  },
  sources: ["isu-a2-32", "dry-matter-balance", "extension-handling-loss"],
  cautions: [buyersTerms, dryerFire],
  example: {
    call: [1000, 25, "corn", 4, 0.8, 1.4, 0.38, 0.3, 0],
    gives: [
      ["Way", "bu paid", "$/bu", "income $", "cost $", "left $", "left $/wet bu", "best"],
      ["sell wet", 1000, 3.2, 3200, 0, 3200, 3.2, ""],
      ["elevator dries", 867, 4, 3468, 380, 3088, 3.088, ""],
      ["dry at home", 887.574, 4, 3550.296, 300, 3250.296, 3.2503, "best"],
    ],
    because: "by hand: 1,000 × (4 − 0.80); 9.5 points × 1.4 % = 13.3 %, 867 × 4 − 380; 1,000 × 75 / 84.5 × 4 − 300",
  },
  compute: (values) =>
    sellWetOrDryOf({
      wetBu: values.bushels,
      grain: values.crop,
      moisturePct: values.moisture,
      marketMoisturePct: values.marketMoisture,
      handlingLossPct: values.handlingLoss,
      priceUsdPerBu: values.price,
      wetDiscountUsdPerBu: values.wetDiscount,
      elevatorShrinkPct: values.elevatorShrink,
      elevatorChargeUsdPerBu: values.elevatorCharge,
      homeCostUsdPerBu: values.homeCost,
    }),
  value: (result, { bushels }) => [
    ["Way", "bu paid", "$/bu", "income $", "cost $", "left $", "left $/wet bu", "best"],
    ...result.ways.map((way) => [
      way.name,
      way.paidBu,
      way.priceUsdPerBu,
      way.incomeUsd,
      way.costUsd,
      way.netUsd,
      bushels === 0 ? 0 : way.netUsd / bushels,
      way === result.best ? "best" : "",
    ]),
  ],
  working: (result) => [
    ...result.ways.map((way) => line(`Left: ${way.name}`, way.netUsd, "$")),
    line("Best", result.best.name),
    line("Ahead of the next by", result.aheadUsd, "$"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});
