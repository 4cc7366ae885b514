import { harvestLimits } from "../../core/harvest/harvest-limits";
import {
  autumnWheatYield as autumnWheatYieldOf,
  headCountYield as headCountYieldOf,
  headWeightYield as headWeightYieldOf,
} from "../../core/harvest/head-count-yield";
import { printedValue } from "../../core/harvest/printed-value";
import { headCounts } from "../../reference/harvest/yield-counts";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";

export const headCountYield = worksheetFunction({
  name: "HEADCOUNTYIELD",
  family: "harvest",
  summary: "Wheat yield before harvest, from the heads in a length of row and the spikelets on a head.",
  asks: ["how much wheat will this field make", "wheat yield estimate from heads", "count wheat heads"],
  args: {
    heads: quantity(harvestLimits.heads, { says: "heads counted along the row" }),
    rowWidth: quantity(harvestLimits.rowWidth, { says: "distance from row to row" }),
    spikelets: quantity(harvestLimits.spikelets, { says: "spikelets on a head, without the top and the bottom one" }),
    kernelsPerSpikelet: optional(
      quantity(harvestLimits.kernelsPerSpikelet, { says: "kernels in a spikelet; 2.1 where the crop was stressed" }),
      null,
      "2.3, a normal crop",
    ),
    feetCounted: optional(quantity(harvestLimits.feetCounted, { says: "feet of row counted" }), 3, "3 ft"),
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield, with small kernels and some loss allowed for" },
  sources: ["ndsu-crop-pest-report-2000"],
  example: {
    call: [135, 7, 15],
    gives: 94.481,
    because: "by hand: 135 × 15 × 2.3 × 0.142 / 7 = 661.365 / 7",
  },
  compute: ({ heads, rowWidth, spikelets, kernelsPerSpikelet, feetCounted }) =>
    headCountYieldOf({ heads, rowWidthIn: rowWidth, spikelets, kernelsPerSpikelet, feetCounted }),
  value: (result) => result.yieldBuPerAc,
  working: (result) => [
    line("Heads on a square foot", result.headsPerSqFt, "heads"),
    line("Kernels on a head", result.kernelsPerHead, "kernels"),
    line("Factor of the method", result.factor),
    line("Yield", result.yieldBuPerAc, "bu/ac"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

export const headWeightYield = worksheetFunction({
  name: "HEADWEIGHTYIELD",
  family: "harvest",
  summary: "Wheat yield before harvest, from heads, kernels and kernel weight.",
  asks: ["wheat yield from thousand kernel weight", "heads per square foot times kernels"],
  args: {
    headsPerSqFt: quantity(harvestLimits.headsPerSqFt, { says: "heads on a square foot" }),
    kernelsPerHead: quantity(harvestLimits.kernelsPerHead, { says: "kernels on a head" }),
    kernelWeight: quantity(harvestLimits.kernelWeight, { says: "grams of a thousand kernels" }),
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield in bushels of 60 lb" },
  sources: ["ontario-wheat-estimate-2017", "ksu-wheat-heads"],
  example: { call: [55, 32, 35], gives: 98.56, because: "by hand: 55 × 32 × 35 × 0.0016 = 61,600 × 0.0016" },
  compute: ({ headsPerSqFt, kernelsPerHead, kernelWeight }) =>
    headWeightYieldOf({ headsPerSqFt, kernelsPerHead, kernelWeightG: kernelWeight }),
  value: (result) => result.yieldBuPerAc,
  working: (result) => [
    line("Kernels on a square foot", result.headsPerSqFt * result.kernelsPerHead, "kernels"),
    line("Factor of the method", result.factor),
    line("Yield", result.yieldBuPerAc, "bu/ac"),
    line("By the rule of a bushel for each head on a square foot", result.headsPerSqFt * headsRule.value, "bu/ac"),
  ],
  cites: (result) => [...result.cited, ...headsRule.cited],
});

const headsRule = printedValue(headCounts, "headsRule");

export const autumnWheatYield = worksheetFunction({
  name: "AUTUMNWHEATYIELD",
  family: "harvest",
  summary: "What a winter wheat stand counted in autumn may yield.",
  asks: ["is my wheat stand good enough", "wheat yield from plants per square foot"],
  args: {
    plantsPerSqFt: quantity(harvestLimits.plantsPerSqFt, { says: "plants on a square foot" }),
    headsPerPlant: optional(quantity(harvestLimits.headsPerPlant, { says: "heads a plant will carry" }), null, "5"),
    kernelsPerHead: optional(quantity(harvestLimits.kernelsPerHead, { says: "kernels on a head" }), null, "22"),
    kernelsPerPound: optional(
      quantity(harvestLimits.kernelsPerPoundWheat, { says: "kernels in a pound" }),
      null,
      "16,000",
    ),
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield if the stand winters and tillers as assumed" },
  sources: ["unl-cropwatch-wheat-2012", "mn-statutes-239.32"],
  example: {
    call: [10],
    gives: 49.9125,
    because: "by hand: 10 × 5 × 22 × 43,560 / 16,000 / 60 = 1,100 × 0.045375",
  },
  compute: ({ plantsPerSqFt, headsPerPlant, kernelsPerHead, kernelsPerPound }) =>
    autumnWheatYieldOf({ plantsPerSqFt, headsPerPlant, kernelsPerHead, kernelsPerLb: kernelsPerPound }),
  value: (result) => result.yieldBuPerAc,
  working: (result) => [
    line("Heads on a square foot", result.headsPerSqFt, "heads"),
    line("Kernels on a head", result.kernelsPerHead, "kernels"),
    line("Kernels in a pound", result.kernelsPerLb, "kernels/lb"),
    line("Yield", result.yieldBuPerAc, "bu/ac"),
    line("Mind", "the usual counts are averages of Nebraska; thick stands carry fewer heads on a plant"),
  ],
  cites: (result) => result.cited,
});
