import { HostError } from "../../../hosts/port";
import type { Desk } from "../action";
import type { KeptTrial, StripText, TrialState } from "./state";

export function changeTrial(desk: Desk, part: Partial<TrialState>, focus?: string): void {
  desk.change((state) => ({ ...state, trial: { ...state.trial, ...part } }), focus);
}

export function changeKept(desk: Desk, part: Partial<KeptTrial>, more: Partial<TrialState> = {}, focus?: string): void {
  changeTrial(desk, { kept: { ...desk.state().trial.kept, ...part }, said: undefined, ...more }, focus);
}

/** What the host could not do is said where it was asked for. */
export async function telling(desk: Desk, at: "paste" | "insert", work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (thrown) {
    if (!(thrown instanceof HostError)) throw thrown;
    changeTrial(desk, { said: { at, says: thrown.message, done: false } });
  }
}

export function holdsSomething(strip: StripText): boolean {
  return Object.values(strip).some((text: string) => text.trim() !== "");
}
