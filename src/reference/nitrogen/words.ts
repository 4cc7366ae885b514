import { crops } from "../crops";

/** Crops that can stand before another, with those that only a credit table knows. */
export const previousCrops = {
  ...crops,
  sweetClover: { label: "sweet clover, harvested", also: ["sweet clover", "sweetclover"] },
  sweetCloverLeft: {
    label: "sweet clover, not harvested",
    also: ["sweet clover not harvested", "sweet clover plowed down", "sweet clover green manure"],
  },
  group1: { label: "group 1 crop", also: ["group 1", "group 1 crops", "group one"] },
  group2: { label: "group 2 crop", also: ["group 2", "group 2 crops", "group two"] },
} as const;

export type PreviousKey = keyof typeof previousCrops;

/** Crops that leave nitrogen behind: a guide without a number for one is not read as zero. */
export const legumes: readonly PreviousKey[] = [
  "soybean",
  "dryBean",
  "fieldPea",
  "chickpea",
  "lentil",
  "alfalfa",
  "redClover",
  "trefoil",
  "peanut",
  "sweetClover",
  "sweetCloverLeft",
];

/** Stand of a legume sod in words, as the lower edge of its class in plants per square foot. */
export const stands = {
  good: { label: "good", also: ["full", "thick"], plantsPerSqFt: 4 },
  fair: { label: "fair", also: ["half", "half stand", "medium"], plantsPerSqFt: 2 },
  poor: { label: "poor", also: ["thin"], plantsPerSqFt: 0 },
} as const;

export type StandKey = keyof typeof stands;

/** Texture of the surface soil, as credits and salt limits tell it apart. */
export const textures = {
  sandy: { label: "sandy", also: ["sand", "loamy sand", "coarse", "sandy loam"] },
  medium: { label: "medium", also: ["loam", "silt loam", "medium to fine", "medium or fine"] },
  fine: { label: "fine", also: ["clay", "clayey", "clay loam", "silty clay loam"] },
} as const;

export type TextureKey = keyof typeof textures;

export const timings = {
  fall: { label: "fall", also: ["autumn"] },
  preplant: { label: "preplant", also: ["spring", "spring preplant", "at planting"] },
  split: { label: "split", also: ["sidedress", "split or sidedress", "side-dress", "in season"] },
} as const;

export type TimingKey = keyof typeof timings;

export const tillages = {
  tilled: { label: "tilled", also: ["conventional", "conventional till", "reduced till"] },
  newNoTill: {
    label: "first five no-till years",
    also: ["new no-till", "no-till under 6 years", "short-term no-till"],
  },
  longNoTill: { label: "long-term no-till", also: ["no-till 6 years or more", "long term notill"] },
} as const;

export type TillageKey = keyof typeof tillages;
