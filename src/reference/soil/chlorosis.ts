import type { Cited } from "../table";

export const chlorosisClasses = ["low", "moderate", "high", "very high", "extreme"] as const;

export type ChlorosisClass = (typeof chlorosisClasses)[number];

/** Soybean iron chlorosis risk by carbonate (columns) and salts (rows). Upper bounds belong to their class. */
export const chlorosisRisk = {
  /** Calcium carbonate equivalent, %. */
  carbonateUpTo: [2.5, 5],
  /** Electrical conductivity 1:1, dS/m. */
  saltsUpTo: [0.25, 0.5, 1],
  classes: [
    ["low", "low", "moderate"],
    ["low", "moderate", "high"],
    ["moderate", "high", "very high"],
    ["very high", "very high", "extreme"],
  ],
  mark: "V",
  source: "chlorosis-risk-2021",
} as const satisfies Cited & {
  carbonateUpTo: readonly number[];
  saltsUpTo: readonly number[];
  classes: readonly (readonly ChlorosisClass[])[];
};
