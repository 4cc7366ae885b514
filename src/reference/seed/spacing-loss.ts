import type { Cited, ReferenceTable } from "../table";

/** Words for published losses by uneven spacing. */
export const spacingLossWords = {
  purdue: { label: "Purdue", also: ["Purdue usual"] },
  guideline37: { label: "SSMG-37", also: ["SSMG 37", "guideline 37"] },
  purdue2004: { label: "Purdue 2004", also: ["Purdue trial 2004"] },
  study2001: { label: "study 2001", also: ["2001 study"] },
} as const;

export type SpacingLossKey = keyof typeof spacingLossWords;

export interface SpacingLossRow extends Cited {
  readonly key: SpacingLossKey;
  readonly buPerAcPerIn: number;
}

export const spacingLosses = {
  title: "Corn lost for each inch of spread in plant spacing",
  units: { buPerAcPerIn: "bu/ac per in" },
  basis: "standard deviation of plant-to-plant distance above what is tolerated",
  rows: [
    { key: "purdue", buPerAcPerIn: 2.5, mark: "M", source: "purdue-spacing" },
    { key: "guideline37", buPerAcPerIn: 4, mark: "V", source: "ssmg-37" },
    { key: "purdue2004", buPerAcPerIn: 2.2, mark: "V", source: "purdue-spacing-2004", note: "One trial at one site." },
    { key: "study2001", buPerAcPerIn: 3.4, mark: "V", source: "spacing-study-2001" },
  ],
} as const satisfies ReferenceTable<SpacingLossRow>;

/** Spread that costs nothing, in. */
export const toleratedSpread = {
  inches: 2,
  mark: "V",
  source: "ssmg-37",
  note: "354 fields in Indiana and Ohio, 1987 to 1996, had a spread of 4.5 in on average, 2.5 to 10.",
} as const satisfies Cited & Record<string, unknown>;

/** Distances that count as a double or a skip, as shares of the nominal spacing. */
export const spacingClasses = {
  doubleUpTo: 0.5,
  skipAbove: 1.5,
  mark: "M",
  source: "iso-7256-1",
} as const satisfies Cited & Record<string, unknown>;
