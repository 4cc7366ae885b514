import type { Family } from "../../../functions/frame/declaration";
import type { Said } from "../parts/outcome";
import type { DeepWordsByName } from "./search/deep-words";
import type { Entries } from "./form/entry";

export interface FindState {
  /** What the person looks for, as typed. */
  readonly query: string;
  /** Whether all that was found is listed, or only the best. */
  readonly allFound: boolean;
  /** Why the column of the selected cell could not be searched for. */
  readonly columnRefused?: string | undefined;
  readonly openFamilies: readonly Family[];
  /** Name of the function whose page is open. */
  readonly shown?: string | undefined;
  /** What was given for the arguments of each function, by its name. */
  readonly forms: Readonly<Record<string, Entries>>;
  /** Functions whose arguments that may be left out are in sight. */
  readonly moreOpen: readonly string[];
  /** What came of putting the formula into a cell. */
  readonly outcome?: Said | undefined;
  /** Functions opened lately, the last one first. */
  readonly recent: readonly string[];
  /** Words from behind the declarations, once they are gathered. */
  readonly deep?: DeepWordsByName | undefined;
}

export const firstFind: FindState = {
  query: "",
  allFound: false,
  openFamilies: [],
  forms: {},
  moreOpen: [],
  recent: [],
};
