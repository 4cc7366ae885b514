import type { Cited, ReferenceTable } from "../table";

export interface ChecklistRow extends Cited {
  readonly factor: string;
  readonly low: string;
  readonly moderate: string;
  readonly high: string;
}

const hrac = { mark: "M", source: "hrac-guideline" } as const;

/** Seven things a grower decides or sees that raise or lower the risk of resistance. No weights are published. */
export const resistanceChecklist = {
  title: "Risk of resistance by management",
  units: {},
  basis: "one field or cropping system, and one site of action where the row says so",
  rows: [
    {
      factor: "Herbicide mix or rotation in the cropping system",
      low: "more than 2 modes of action",
      moderate: "2 modes of action",
      high: "1 mode of action",
      ...hrac,
    },
    {
      factor: "Weed control in the cropping system",
      low: "cultural, mechanical and chemical",
      moderate: "cultural and chemical",
      high: "chemical only",
      ...hrac,
    },
    {
      factor: "Use of the same mode of action in a season",
      low: "once",
      moderate: "more than once",
      high: "many times",
      ...hrac,
    },
    { factor: "Cropping system", low: "full rotation", moderate: "limited rotation", high: "no rotation", ...hrac },
    {
      factor: "Resistance status to that mode of action",
      low: "unknown",
      moderate: "limited",
      high: "common",
      ...hrac,
    },
    { factor: "Weed infestation", low: "low", moderate: "moderate", high: "high", ...hrac },
    { factor: "Control in the last three years", low: "good", moderate: "declining", high: "poor", ...hrac },
  ],
} as const satisfies ReferenceTable<ChecklistRow>;
