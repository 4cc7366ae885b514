import type { Source } from "./source";

/** Publications on budgets, risk, capital, trials and drainage; and definitions of units. */
export const economicsSources = {} as const satisfies Record<string, Source>;
