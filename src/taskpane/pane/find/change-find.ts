import type { Desk } from "../action";
import { changePart } from "../change-part";
import type { Entries, Entry } from "./form/entry";
import type { FindState } from "./state";

export const changeFind = changePart("find");

/** What is given so far for the function whose page is open. */
export function entriesOf({ shown, forms }: FindState): Entries {
  return (shown === undefined ? undefined : forms[shown]) ?? {};
}

/** Puts other entries into the open form; what was said of the last insertion no longer holds. */
export function changeEntries(desk: Desk, recipe: (entries: Entries) => Entries, focus?: string): void {
  const { find } = desk.state();
  if (find.shown === undefined) return;
  changeFind(desk, { forms: { ...find.forms, [find.shown]: recipe(entriesOf(find)) }, outcome: undefined }, focus);
}

export function changeEntry(desk: Desk, argument: string, part: Partial<Entry>, focus?: string): void {
  changeEntries(desk, (entries) => ({ ...entries, [argument]: { text: "", ...entries[argument], ...part } }), focus);
}
