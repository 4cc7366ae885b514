import type { Desk } from "../action";
import { changePart } from "../change-part";
import { unlessRefused } from "../unless-refused";
import type { KeptTrial, StripText, TrialState } from "./state";

export const changeTrial = changePart("trial");

export function changeKept(desk: Desk, part: Partial<KeptTrial>, more: Partial<TrialState> = {}, focus?: string): void {
  changeTrial(desk, { kept: { ...desk.state().trial.kept, ...part }, said: undefined, ...more }, focus);
}

/** What the host could not do is said where it was asked for. */
export function telling(desk: Desk, at: "paste" | "insert", work: () => Promise<void>): Promise<void> {
  return unlessRefused(work, (says) => changeTrial(desk, { said: { at, says, done: false } }));
}

export function holdsSomething(strip: StripText): boolean {
  return Object.values(strip).some((text: string) => text.trim() !== "");
}
