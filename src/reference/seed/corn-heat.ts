import type { Cited } from "../table";

/** Temperatures that corn's heat units are held between, °F. */
export const cornTemperatures = {
  base: 50,
  cap: 86,
  mark: "V",
  source: "osu-agf-101",
} as const satisfies Cited & Record<string, unknown>;

/** Heat units from planting to emergence; also what a rating from emergence lacks of one from planting. */
export const cornEmergence = {
  heatUnits: 115,
  mark: "V",
  source: "umn-coulter-2021",
  note: "100 to 120.",
} as const satisfies Cited & Record<string, unknown>;

export const leafGuideWords = {
  purdue: { label: "Purdue", also: ["IN", "Indiana", "Minnesota", "MN"] },
  iowa: { label: "Iowa", also: ["IA", "PMR 1009"] },
} as const;

export type LeafGuideKey = keyof typeof leafGuideWords;

export interface LeafPace extends Cited {
  readonly key: LeafGuideKey;
  /** Heat units a leaf up to the tenth, and from there to the last. */
  readonly toTenth: number;
  readonly pastTenth: number;
}

export const leafPaces: readonly LeafPace[] = [
  { key: "purdue", toTenth: 82, pastTenth: 50, mark: "V", source: "purdue-corn-leaves" },
  { key: "iowa", toTenth: 84, pastTenth: 56, mark: "V", source: "isu-pmr-1009" },
];

/** Fewer heat units to black layer for each day of planting past May 1. */
export const lateHybrid = {
  heatUnitsPerDay: 6.8,
  from: [5, 1],
  to: [6, 15],
  mark: "V",
  source: "nielsen-2002",
  note: "Eastern Corn Belt, to about mid June.",
} as const satisfies Cited & Record<string, unknown>;
