import type { Desk } from "./action";
import type { PaneState } from "./state";

/** All but the single facts: what a view, or what stands beside the views, keeps together. */
type PartName = Exclude<keyof PaneState, "view" | "forgotten" | "trouble">;

/** Makes the function that changes one part of the state; the focus then goes to the element of that id, if given. */
export function changePart<Name extends PartName>(name: Name) {
  return (desk: Desk, change: Partial<PaneState[Name]>, focus?: string): void =>
    desk.change((state) => ({ ...state, [name]: { ...state[name], ...change } }), focus);
}
