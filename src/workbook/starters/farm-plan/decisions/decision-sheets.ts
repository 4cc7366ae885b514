import type { StarterSheet } from "../../starter-sheet";

const parts = ["practices"] as const;
const page = ["page"] as const;

/** The sheets about practices: what each is called and what it is for. */
export const decisionSheets = {
  practices: { name: "Practices", purpose: "which practices pay, how likely: adopt, test or skip", parts },
  "trial-1": { name: "Trial 1", purpose: "a strip trial: layout, yields, what it says", parts },
  "trial-2": { name: "Trial 2", purpose: "another strip trial", parts },
  stack: { name: "Stack", purpose: "which practices to take up together, and what an acre then earns", parts },
  "profit-range": {
    name: "Range of profit",
    purpose: "how far profit may range, and the odds of covering costs",
    parts: page,
  },
} as const satisfies Record<string, StarterSheet>;

/** The page to show, the last of the plan. */
export const pageSheets = {
  "farm-page": { name: "Landlord or lender", purpose: "one page to show: plan, ranges, soil, practices", parts: page },
} as const satisfies Record<string, StarterSheet>;
