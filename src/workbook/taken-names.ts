/** Names already used in a workbook; a new plan steps around them. Compared without regard to case. */
export interface TakenNames {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
  readonly tables: readonly string[];
}

export const nothingTaken: TakenNames = { sheets: [], names: [], tables: [] };
