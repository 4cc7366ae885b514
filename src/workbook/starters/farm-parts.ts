/** Sheets of the farm plan that a person may leave out, in the order they are offered. */
export const farmParts = {
  practices: {
    label: "Practices and trials",
    says: "Which practices pay, strip trials, the best set within a budget.",
  },
  harvest: {
    label: "Harvest check",
    says: "Yield counts, losses behind the combine, sell wet or dry, store or sell.",
  },
} as const;

export type FarmPart = keyof typeof farmParts;

/** Every part there is. */
export const allFarmParts: readonly FarmPart[] = Object.keys(farmParts).filter(isFarmPart);

export function isFarmPart(name: string): name is FarmPart {
  return Object.hasOwn(farmParts, name);
}
