import { element } from "../element";
import type { WhatIfState } from "./state";

/** What came of the last order, where it was given. */
export function saidAt(at: NonNullable<WhatIfState["said"]>["at"], { said }: WhatIfState): HTMLElement {
  const mine = said?.at === at ? said : undefined;
  return element("p", { role: "status", class: mine && !mine.done ? "outcome refusal" : "outcome" }, mine?.says ?? "");
}
