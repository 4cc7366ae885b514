import type { Cited, ReferenceTable } from "../table";

export const drainSoils = {
  mineral: { label: "mineral", also: ["mineral soil"] },
  organic: { label: "organic", also: ["organic soil", "muck", "peat"] },
} as const;
export type DrainSoilKey = keyof typeof drainSoils;

export const drainCrops = {
  field: { label: "field crops", also: ["field", "row crops", "corn", "soybean", "wheat"] },
  truck: { label: "truck crops", also: ["truck", "vegetable"] },
} as const;
export type DrainCropKey = keyof typeof drainCrops;

export const surfaceInlets = {
  none: { label: "none", also: ["no", "no inlets"] },
  blind: { label: "blind", also: ["blind inlets"] },
  open: { label: "open", also: ["open inlets"] },
} as const;
export type SurfaceInletKey = keyof typeof surfaceInlets;

export interface DrainCoefficientRow extends Cited {
  readonly soil: DrainSoilKey;
  readonly crop: DrainCropKey;
  readonly inlets: SurfaceInletKey;
  readonly lowInPerDay: number;
  readonly highInPerDay: number;
}

const minnesota = {
  mark: "M",
  source: "umn-drainage-2001",
  note: "After the USDA National Engineering Handbook, part 650, chapter 14, and ASAE EP260.",
} as const;

/** Depth of water a drain system is built to carry off in a day. */
export const drainCoefficients = {
  title: "Drainage coefficients",
  units: { lowInPerDay: "in/day", highInPerDay: "in/day" },
  basis: "by soil, crop and surface inlets, humid regions",
  rows: [
    { soil: "mineral", crop: "field", inlets: "none", lowInPerDay: 0.375, highInPerDay: 0.5, ...minnesota },
    { soil: "mineral", crop: "field", inlets: "blind", lowInPerDay: 0.5, highInPerDay: 0.75, ...minnesota },
    { soil: "mineral", crop: "field", inlets: "open", lowInPerDay: 0.5, highInPerDay: 1, ...minnesota },
    { soil: "mineral", crop: "truck", inlets: "none", lowInPerDay: 0.5, highInPerDay: 0.75, ...minnesota },
    { soil: "mineral", crop: "truck", inlets: "blind", lowInPerDay: 0.75, highInPerDay: 1, ...minnesota },
    { soil: "mineral", crop: "truck", inlets: "open", lowInPerDay: 1, highInPerDay: 1.5, ...minnesota },
    { soil: "organic", crop: "field", inlets: "none", lowInPerDay: 0.5, highInPerDay: 0.75, ...minnesota },
    { soil: "organic", crop: "field", inlets: "blind", lowInPerDay: 0.75, highInPerDay: 1, ...minnesota },
    { soil: "organic", crop: "field", inlets: "open", lowInPerDay: 1, highInPerDay: 1.5, ...minnesota },
    { soil: "organic", crop: "truck", inlets: "none", lowInPerDay: 0.75, highInPerDay: 1.5, ...minnesota },
    { soil: "organic", crop: "truck", inlets: "blind", lowInPerDay: 1.5, highInPerDay: 2, ...minnesota },
    { soil: "organic", crop: "truck", inlets: "open", lowInPerDay: 2, highInPerDay: 4, ...minnesota },
  ],
} as const satisfies ReferenceTable<DrainCoefficientRow>;

/** What Illinois row-crop practice takes, as seen in print. */
export const illinoisCoefficient = {
  title: "Drainage coefficients of Illinois practice",
  units: { lowInPerDay: "in/day", highInPerDay: "in/day" },
  basis: "row crops on mineral soil without surface inlets",
  rows: [{ lowInPerDay: 0.375, highInPerDay: 0.5, mark: "V", source: "cooke-illinois-2019" }],
} as const satisfies ReferenceTable<Cited & { readonly lowInPerDay: number; readonly highInPerDay: number }>;

export const spacingSoils = {
  clayLoam: { label: "clay loam", also: [] },
  siltyClayLoam: { label: "silty clay loam", also: [] },
  siltLoam: { label: "silt loam", also: [] },
  loam: { label: "loam", also: [] },
  sandyLoam: { label: "sandy loam", also: [] },
} as const;
export type SpacingSoilKey = keyof typeof spacingSoils;

/** How well drained, and the coefficient that stands for it. */
export const drainageLevels = {
  fair: { label: "fair", also: ["0.25", "1/4"], inPerDay: 0.25 },
  good: { label: "good", also: ["0.375", "3/8"], inPerDay: 0.375 },
  excellent: { label: "excellent", also: ["0.5", "0.50", "1/2"], inPerDay: 0.5 },
} as const;
export type DrainageLevelKey = keyof typeof drainageLevels;

export interface SoilSpacingRow extends Cited {
  readonly soil: SpacingSoilKey;
  readonly permeability: string;
  readonly fair: number;
  readonly good: number;
  readonly excellent: number;
  readonly depthLowFt: number;
  readonly depthHighFt: number;
}

const spacing = { mark: "M", source: "umn-drainage-2001" } as const;

/** Usual distances between parallel drains. */
export const soilSpacings = {
  title: "Drain spacing by soil",
  units: { fair: "ft", good: "ft", excellent: "ft", depthLowFt: "ft", depthHighFt: "ft" },
  basis: "Minnesota; for 1/4, 3/8 and 1/2 in/day",
  rows: [
    {
      soil: "clayLoam",
      permeability: "very low",
      fair: 70,
      good: 50,
      excellent: 35,
      depthLowFt: 3,
      depthHighFt: 3.5,
      ...spacing,
    },
    {
      soil: "siltyClayLoam",
      permeability: "low",
      fair: 95,
      good: 65,
      excellent: 45,
      depthLowFt: 3.3,
      depthHighFt: 3.8,
      ...spacing,
    },
    {
      soil: "siltLoam",
      permeability: "moderately low",
      fair: 130,
      good: 90,
      excellent: 60,
      depthLowFt: 3.5,
      depthHighFt: 4,
      ...spacing,
    },
    {
      soil: "loam",
      permeability: "moderate",
      fair: 200,
      good: 140,
      excellent: 95,
      depthLowFt: 3.8,
      depthHighFt: 4.3,
      ...spacing,
    },
    {
      soil: "sandyLoam",
      permeability: "moderately high",
      fair: 300,
      good: 210,
      excellent: 150,
      depthLowFt: 4,
      depthHighFt: 4.5,
      ...spacing,
    },
  ],
} as const satisfies ReferenceTable<SoilSpacingRow>;
