import { outcomeLine } from "../parts/outcome";
import type { WhatIfState } from "./state";

/** What came of the last order, where it was given. */
export function saidAt(at: NonNullable<WhatIfState["said"]>["at"], { said }: WhatIfState): HTMLElement {
  return outcomeLine(said?.at === at ? said : undefined);
}
