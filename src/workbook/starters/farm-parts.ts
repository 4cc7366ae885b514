/** Sheets of the farm plan that a person may leave out, in the order they are offered. */
export const farmParts = {
  stand: {
    label: "Stand and replant",
    says: "Counts of a stand, what it may yield, and whether to plant again.",
  },
  protection: {
    label: "Protection program",
    says: "Herbicide groups, cost and tank for each crop, by active ingredient.",
  },
  tillage: {
    label: "Passes and tillage",
    says: "What a pass costs, two tillage systems side by side, soil loss.",
  },
  drainage: {
    label: "Tile drainage",
    says: "Spacing, pipe, cost, and whether the gain pays for it.",
  },
  harvest: {
    label: "Harvest check",
    says: "Yield counts, losses behind the combine, sell wet or dry, store or sell.",
  },
  practices: {
    label: "Practices and trials",
    says: "Which practices pay, strip trials, the best set within a budget.",
  },
  page: {
    label: "Landlord or lender page",
    says: "How far profit may range, and one page to show.",
  },
} as const;

export type FarmPart = keyof typeof farmParts;

/** Every part there is. */
export const allFarmParts: readonly FarmPart[] = Object.keys(farmParts).filter(isFarmPart);

export function isFarmPart(name: string): name is FarmPart {
  return Object.hasOwn(farmParts, name);
}
