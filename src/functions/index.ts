import type { WorksheetFunction } from "./frame";

/** Every worksheet function, in the order of the documentation. */
export const allFunctions: readonly WorksheetFunction[] = [];
