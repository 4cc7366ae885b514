import type { Cited } from "../table";

/** Residue by how easily tillage and weather bury or break it. */
export const residueKinds = {
  nonFragile: {
    label: "non-fragile",
    also: ["corn", "sorghum", "grain sorghum", "wheat", "spring wheat", "barley", "oat", "rye", "small grain straw"],
  },
  fragile: {
    label: "fragile",
    also: ["soybean", "bean", "dry bean", "edible bean", "pea", "field pea", "sunflower", "canola", "cotton"],
  },
} as const;

export type ResidueKindKey = keyof typeof residueKinds;

/** Which crops leave fragile residue; wheat under 45 bu/ac does too. */
export const residueClasses = {
  mark: "V",
  source: "scs-residue-1992",
} as const satisfies Cited;
