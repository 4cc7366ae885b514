/** Kinds of soil that lime methods tell apart. */
export const soilKinds = {
  mineral: { label: "mineral", also: ["mineral soil"] },
  mineralOrganic: { label: "mineral-organic", also: ["mineral organic"] },
  organic: { label: "organic", also: ["muck", "peat", "organic soil"] },
} as const;

export type SoilKindKey = keyof typeof soilKinds;
