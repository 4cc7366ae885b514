import { harvestLimits } from "../../core/harvest/harvest-limits";
import { storageCost as storageCostOf } from "../../core/harvest/storage-cost";
import { line, optional, percent, quantity, rate as rateOf, worksheetFunction } from "../frame";
import { binEntry } from "../cautions";

const carry = {
  price: quantity(harvestLimits.price, { says: "price offered now" }),
  months: quantity(harvestLimits.months, { says: "months in store" }),
  rate: rateOf(harvestLimits.rate, { says: "interest a year on the money in the bin, 8% or 0.08" }),
  monthlyCharge: optional(
    quantity({ ...harvestLimits.costPerBushel, unit: "$/bu/month" }, { says: "storage charge, or the bin's own cost" }),
    0,
    "0",
  ),
  handling: optional(
    quantity(harvestLimits.costPerBushel, { says: "hauling and turning into and out of the bin, once" }),
    0,
    "0",
  ),
  extraDrying: optional(
    quantity(harvestLimits.costPerBushel, { says: "drying beyond what selling now asks for" }),
    0,
    "0",
  ),
  extraShrink: optional(
    percent(harvestLimits.extraShrink, { says: "shrink beyond what selling now takes", smallIsUsual: true }),
    0,
    "0",
  ),
};

interface CarryValues {
  readonly price: number;
  readonly months: number;
  readonly rate: number;
  readonly monthlyCharge: number;
  readonly handling: number;
  readonly extraDrying: number;
  readonly extraShrink: number;
}

function costOf(values: CarryValues) {
  return storageCostOf({
    priceUsdPerBu: values.price,
    months: values.months,
    rate: values.rate,
    chargeUsdPerBuMonth: values.monthlyCharge,
    handlingUsdPerBu: values.handling,
    extraDryingUsdPerBu: values.extraDrying,
    extraShrinkPct: values.extraShrink,
  });
}

function costLines(result: ReturnType<typeof costOf>, values: CarryValues) {
  return [
    line("Interest", result.interestUsdPerBu, "$/bu"),
    line("Storage charge", result.chargeUsdPerBu, "$/bu"),
    line("Handling, once", values.handling, "$/bu"),
    line("Extra drying", values.extraDrying, "$/bu"),
    line("Extra shrink", result.shrinkUsdPerBu, "$/bu"),
    line("Each further month adds", result.perMonthUsdPerBu, "$/bu"),
    line("Cost of storing", result.costUsdPerBu, "$/bu"),
    line("Price that pays it back", result.breakEvenUsdPerBu, "$/bu"),
  ];
}

export const storageCost = worksheetFunction({
  name: "STORAGECOST",
  family: "harvest",
  summary: "What it costs to hold a bushel for some months.",
  asks: ["what does storing grain cost", "cost of carry", "store or sell at harvest"],
  args: carry,
  returns: { shape: "one", unit: "$/bu", says: "cost of holding a bushel" },
  sources: ["carrying-grain"],
  cautions: [binEntry],
  example: {
    call: [4, 6, 0.09, 0.03, 0.1, 0.05, 1],
    gives: 0.55,
    tolerance: 0.000_01,
    because: "by hand: 4 × 0.09 / 12 × 6 = 0.18; 0.03 × 6 = 0.18; 0.10; 0.05; 1 % of 4 = 0.04",
  },
  compute: costOf,
  value: (result) => result.costUsdPerBu,
  working: costLines,
});

export const storageBreakEven = worksheetFunction({
  name: "STORAGEBREAKEVEN",
  family: "harvest",
  summary: "Later price at which storing a bushel has paid its cost.",
  asks: ["what price do I need to store corn", "break-even price for storage", "does storing pay"],
  args: carry,
  returns: { shape: "one", unit: "$/bu", says: "price needed at the end; below it, selling now was better" },
  sources: ["carrying-grain"],
  cautions: [binEntry],
  example: {
    call: [4, 6, 0.09, 0.03, 0.1, 0.05, 1],
    gives: 4.55,
    tolerance: 0.000_01,
    because: "by hand: 4 + 0.18 + 0.18 + 0.10 + 0.05 + 0.04",
  },
  compute: costOf,
  value: (result) => result.breakEvenUsdPerBu,
  working: costLines,
});
