import { earCountYield as earCountYieldOf, type KernelSize } from "../../core/harvest/ear-count-yield";
import { harvestLimits } from "../../core/harvest/harvest-limits";
import { podCountYield as podCountYieldOf, podsFromSample, podsFromStand } from "../../core/harvest/pod-count-yield";
import type { PodCountYield, SeedSize } from "../../core/harvest/pod-count-yield";
import { printedValue } from "../../core/harvest/printed-value";
import {
  cornEstimateSpread,
  podCounts,
  type KernelFillKey,
  type SoybeanSizeKey,
} from "../../reference/harvest/yield-counts";
import type { Cited } from "../../reference/table";
import { line, optional, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { orWord } from "../number-or-word";
import { checkLines } from "../check-lines";
import { kernelFillWords, soybeanSizeWords } from "./harvest-words";

const kernelsPerBushel = optional(
  orWord<KernelFillKey, KernelSize>(
    quantity(harvestLimits.kernelsPerBushel, {
      says: "kernels in a bushel, such as 90000, or a word for the fill: normal (90,000), modern (85,000) or small (110,000)",
    }),
    kernelFillWords,
    { ofNumber: (kernelsPerBu) => ({ kernelsPerBu }), ofWord: (fill) => ({ fill }) },
  ),
  { fill: "normal" } as const,
  "normal: 90,000 kernels in a bushel",
);

export const earCountYield = worksheetFunction({
  name: "EARCOUNTYIELD",
  family: "harvest",
  summary: "Corn yield before harvest, from ears and kernels counted from the milk stage on.",
  asks: ["how much corn will this field make", "corn yield estimate from ears", "count ears and kernels"],
  args: {
    ears: quantity(harvestLimits.ears, { says: "harvestable ears on the ground counted, usually 1/1000 of an acre" }),
    kernelRows: quantity(harvestLimits.kernelRows, {
      says: "rows of kernels around an ear, the mean of every fifth ear",
    }),
    kernelsPerRow: quantity(harvestLimits.kernelsPerRow, {
      says: "kernels along a row, the mean of the same ears; leave out the small ones at butt and tip",
    }),
    kernelsPerBushel,
    fractionOfAcre: optional(
      quantity(harvestLimits.fractionOfAcre, { says: "part of an acre the ears were counted on" }),
      0.001,
      "0.001: 1/1000 of an acre; ROWLENGTH tells its length",
    ),
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield at market moisture, if the kernels fill as assumed" },
  sources: ["illinois-corn-components", "missouri-corn-estimate-2020", "corn-estimate-spread"],
  example: { call: [30, 16, 30], gives: 160, because: "by hand: 30 × 1,000 × 16 × 30 / 90,000" },
  compute: ({ ears, kernelRows, kernelsPerRow, kernelsPerBushel: kernelSize, fractionOfAcre }) =>
    earCountYieldOf({ ears, kernelRows, kernelsPerRow, kernelSize, fractionOfAcre }),
  value: (result) => result.yieldBuPerAc,
  working: (result) => [
    line("Ears on an acre", result.earsPerAc, "ears/ac"),
    line("Kernels on an ear", result.kernelsPerEar, "kernels"),
    line("Kernels in a bushel", result.kernelsPerBu, "kernels/bu"),
    line("Yield", result.yieldBuPerAc, "bu/ac"),
    line("Early estimates are often off by", cornEstimateSpread.rows[0].value, "bu/ac either way"),
    line(
      "Mind",
      "count several places: a column of counts gives a column of yields, and their spread tells how sure it is",
    ),
    ...checkLines(cornCites(result)),
  ],
  cites: (result) => cornCites(result),
});

function cornCites({ cited }: { readonly cited: readonly Cited[] }): Cited[] {
  return [...cited, ...cornEstimateSpread.rows];
}

const seedsPerPod = optional(
  quantity(harvestLimits.seedsPerPod, { says: "seeds in a pod" }),
  null,
  "2.5, as North Dakota State University counts",
);

function seedsPerPound<const Default extends SeedSize | null>(whenBlank: Default, says: string) {
  return optional(
    orWord<SoybeanSizeKey, SeedSize>(
      quantity(harvestLimits.seedsPerPoundSoybean, {
        says: "seeds in a pound, or a word for their size: large (2,500), normal (3,000) or small (3,500)",
      }),
      soybeanSizeWords,
      { ofNumber: (seedsPerLb) => ({ seedsPerLb }), ofWord: (size) => ({ size }) },
    ),
    whenBlank,
    says,
  );
}

export const podCountYield = worksheetFunction({
  name: "PODCOUNTYIELD",
  family: "harvest",
  summary: "Soybean yield before harvest, from the stand and the pods on a plant.",
  asks: ["how many bushels of soybeans", "soybean yield estimate from pods", "count pods per plant"],
  args: {
    plants: quantity(harvestLimits.plants, { says: "plants on an acre" }),
    podsPerPlant: quantity(harvestLimits.podsPerPlant, { says: "pods on a plant, the mean of ten or more" }),
    seedsPerPod,
    seedsPerPound: seedsPerPound(null, "2,500, as North Dakota State University counts"),
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield at market moisture, if the pods fill as assumed" },
  sources: ["ndsu-procrop-soybean", "purdue-soybean-estimate", "ndsu-soybean-field-guide"],
  example: {
    call: [120_000, 30],
    gives: 60,
    because: "by hand: 120,000 × 30 × 2.5 / 2,500 / 60 = 9,000,000 / 150,000",
  },
  compute: (values) =>
    withUsual(podsFromStand(values.plants, values.podsPerPlant), values.seedsPerPod, values.seedsPerPound),
  value: (result) => result.yieldBuPerAc,
  working: (result) => podLines(result),
  cites: (result) => result.cited,
});

export const podRowYield = worksheetFunction({
  name: "PODROWYIELD",
  family: "harvest",
  summary: "Soybean yield before harvest, from the pods on a short length of row.",
  asks: ["count soybean pods in a row", "soybean yield from 21 inches of row"],
  args: {
    pods: quantity(harvestLimits.pods, {
      says: "pods on the ground counted: 1/10,000 acre is 21 inches of one 30-inch row, of two 15-inch rows, of four 7.5-inch rows",
    }),
    seedsPerPod,
    seedsPerPound: seedsPerPound({ size: "normal" }, "normal: 3,000 seeds in a pound, as Purdue University counts"),
    fractionOfAcre: optional(
      quantity(harvestLimits.fractionOfAcre, { says: "part of an acre the pods were counted on" }),
      0.0001,
      "0.0001: 1/10,000 of an acre",
    ),
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield at market moisture, if the pods fill as assumed" },
  sources: ["purdue-soybean-estimate", "ndsu-procrop-soybean"],
  example: { call: [360], gives: 50, because: "by hand, as Purdue prints it: 360 pods × 2.5 / 18" },
  compute: (values) =>
    withUsual(podsFromSample(values.pods, values.fractionOfAcre), values.seedsPerPod, values.seedsPerPound),
  value: (result) => result.yieldBuPerAc,
  working: (result) => podLines(result),
  cites: (result) => result.cited,
});

function withUsual(podsPerAc: number, seeds: number | null, size: SeedSize | null): PodCountYield {
  const usualSeeds = printedValue(podCounts, "seedsPerPod");
  const usualSize = printedValue(podCounts, "seedsPerPound");
  const result = podCountYieldOf({
    podsPerAc,
    seedsPerPod: seeds ?? usualSeeds.value,
    seedSize: size ?? { seedsPerLb: usualSize.value },
  });
  const usual = [...(seeds === null ? usualSeeds.cited : []), ...(size === null ? usualSize.cited : [])];
  return { ...result, cited: [...usual, ...result.cited] };
}

function podLines(result: PodCountYield): WorkingLine[] {
  return [
    line("Pods on an acre", result.podsPerAc, "pods/ac"),
    line("Seeds on an acre", result.seedsPerAc, "seeds/ac"),
    line("Seeds in a pound", result.seedsPerLb, "seeds/lb"),
    line("Pounds in a bushel", result.bushelLb, "lb/bu"),
    line("Yield", result.yieldBuPerAc, "bu/ac"),
    line("Mind", "pods differ much from place to place: count five or more places"),
    ...checkLines(result.cited.filter((row) => (podCounts.rows as readonly Cited[]).includes(row))),
  ];
}
