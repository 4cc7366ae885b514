import type { Family } from "../../../functions/frame/declaration";

export interface FindState {
  /** What the person looks for, as typed. */
  readonly query: string;
  readonly openFamilies: readonly Family[];
  /** Name of the function whose page is open. */
  readonly shown?: string | undefined;
  /** What came of putting the example into a cell. */
  readonly outcome?: { readonly done: boolean; readonly says: string } | undefined;
}

export const firstFind: FindState = { query: "", openFamilies: [] };
