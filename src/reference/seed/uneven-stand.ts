import type { Cited, ReferenceTable } from "../table";

export const unevenWords = {
  shortGaps: { label: "short gaps", also: ["gaps 16 to 33 in", "gaps of 16 to 33 in"] },
  longGaps: { label: "long gaps", also: ["gaps 4 to 6 ft", "gaps of 4 to 6 ft"] },
  lateHalf: { label: "half two leaves behind", also: ["uneven emergence", "two leaves behind"] },
} as const;

export type UnevenKey = keyof typeof unevenWords;

export interface UnevenRow extends Cited {
  readonly key: UnevenKey;
  readonly lossPct: number;
}

/** Taken off what a table gives for an even stand. */
export const unevenStands = {
  title: "Corn lost to gaps and uneven emergence",
  units: { lossPct: "% of yield" },
  basis: "corn, on top of the loss by date and stand",
  rows: [
    { key: "shortGaps", lossPct: 2, mark: "V", source: "isu-gaps-2009", note: "Recurring gaps of 16 to 33 in." },
    {
      key: "longGaps",
      lossPct: 5,
      mark: "V",
      source: "isu-gaps-2009",
      note: "Several gaps of 4 to 6 ft; an older text has 4 to 6 %.",
    },
    {
      key: "lateHalf",
      lossPct: 7.5,
      mark: "V",
      source: "isu-gaps-2009",
      note: "Half or more of the plants two leaves behind: 5 to 10 % printed, the middle taken here.",
    },
  ],
} as const satisfies ReferenceTable<UnevenRow>;
