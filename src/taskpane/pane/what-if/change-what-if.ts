import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { unlessRefused } from "../unless-refused";
import type { Kept, WhatIfState } from "./state";

export const changeWhatIf = changePart("whatIf");

/** Changes what is remembered; a question that was open no longer fits. */
export function changeKept(desk: Desk, part: Partial<Kept>, more: Partial<WhatIfState> = {}, focus?: string): void {
  const { kept } = desk.state().whatIf;
  changeWhatIf(desk, { kept: { ...kept, ...part }, asking: false, said: undefined, ...more }, focus);
}

/** An action that takes over what was typed. */
export function entry(name: string, part: (value: string, state: WhatIfState) => Partial<Kept>): Action {
  return {
    name: `what-if.${name}`,
    perform: (desk, value) => changeKept(desk, part(value, desk.state().whatIf)),
  };
}

/** What the host could not do is said where it was asked for. */
export function telling(
  desk: Desk,
  at: NonNullable<WhatIfState["said"]>["at"],
  work: () => Promise<void>,
): Promise<void> {
  return unlessRefused(work, (says) => changeWhatIf(desk, { said: { at, says, done: false } }));
}
