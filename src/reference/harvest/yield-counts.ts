import type { Cited, ReferenceTable } from "../table";

/** A usual count that stands in when a person has none of their own. */
export interface UsualCountRow<Key extends string> extends Cited {
  readonly key: Key;
  readonly value: number;
}

/** Words for how full the kernels are, with the kernels that then make a bushel. */
export const kernelFills = {
  normal: { label: "normal", also: ["average", "normal fill"] },
  modern: { label: "modern", also: ["large", "large kernels", "good fill", "modern hybrid"] },
  small: { label: "small", also: ["small kernels", "dry year", "poor fill"] },
} as const;
export type KernelFillKey = keyof typeof kernelFills;

export const kernelsPerBushel = {
  title: "Corn kernels in a bushel",
  units: { value: "kernels/bu" },
  basis: "a bushel of 56 lb at market moisture",
  rows: [
    { key: "normal", value: 90_000, mark: "V", source: "illinois-corn-components" },
    { key: "modern", value: 85_000, mark: "V", source: "missouri-corn-estimate-2020" },
    {
      key: "small",
      value: 110_000,
      mark: "V",
      source: "illinois-corn-components",
      note: "Small kernels of a dry year.",
    },
  ],
} as const satisfies ReferenceTable<UsualCountRow<KernelFillKey>>;

/** How far a corn estimate made at the milk stage is usually off. */
export const cornEstimateSpread = {
  title: "Spread of a corn yield estimate",
  units: { value: "bu/ac" },
  basis: "an estimate at the milk stage (R3), up or down",
  rows: [{ key: "spread", value: 20, mark: "M", source: "corn-estimate-spread" }],
} as const satisfies ReferenceTable<UsualCountRow<"spread">>;

/** Words for soybean seed size, with the seeds that then make a pound. */
export const soybeanSizes = {
  large: { label: "large", also: ["large seed"] },
  normal: { label: "normal", also: ["average", "normal seed"] },
  small: { label: "small", also: ["small seed"] },
} as const;
export type SoybeanSizeKey = keyof typeof soybeanSizes;

export const soybeanSeedsPerPound = {
  title: "Soybean seeds in a pound",
  units: { value: "seeds/lb" },
  basis: "seed at market moisture",
  rows: [
    { key: "large", value: 2500, mark: "V", source: "purdue-soybean-estimate" },
    { key: "normal", value: 3000, mark: "V", source: "purdue-soybean-estimate" },
    { key: "small", value: 3500, mark: "V", source: "purdue-soybean-estimate" },
  ],
} as const satisfies ReferenceTable<UsualCountRow<SoybeanSizeKey>>;

export const podCounts = {
  title: "Usual counts for a soybean estimate",
  units: { value: "as named" },
  basis: "R5 to R6, full seed",
  rows: [
    {
      key: "seedsPerPod",
      value: 2.5,
      mark: "V",
      source: "ndsu-procrop-soybean",
      note: "The North Dakota field guide takes 2.3 seeds per pod and 3,000 seeds per pound, a lower estimate.",
    },
    { key: "seedsPerPound", value: 2500, mark: "V", source: "ndsu-procrop-soybean" },
  ],
} as const satisfies ReferenceTable<UsualCountRow<"seedsPerPod" | "seedsPerPound">>;

export const headCounts = {
  title: "Usual counts and factors for a wheat estimate",
  units: { value: "as named" },
  basis: "wheat after heading; the factors carry the bushel of 60 lb",
  rows: [
    {
      key: "kernelsPerSpikelet",
      value: 2.3,
      mark: "V",
      source: "ndsu-crop-pest-report-2000",
      note: "2.1 where the crop was stressed.",
    },
    {
      key: "threeFootFactor",
      value: 0.142,
      mark: "V",
      source: "ndsu-crop-pest-report-2000",
      note: "The factor stands for 20,450 kernels in a pound, more than most wheat has: small kernels and losses are in it.",
    },
    { key: "kernelWeightFactor", value: 0.0016, mark: "V", source: "ontario-wheat-estimate-2017" },
    {
      key: "headsRule",
      value: 1,
      mark: "V",
      source: "ksu-wheat-heads",
      note: "Bushels an acre for each head on a square foot.",
    },
    { key: "autumnHeads", value: 5, mark: "V", source: "unl-cropwatch-wheat-2012" },
    { key: "autumnKernels", value: 22, mark: "V", source: "unl-cropwatch-wheat-2012" },
    { key: "autumnKernelsPerPound", value: 16_000, mark: "V", source: "unl-cropwatch-wheat-2012" },
  ],
} as const satisfies ReferenceTable<UsualCountRow<string>>;

export type HeadCountKey = (typeof headCounts.rows)[number]["key"];
