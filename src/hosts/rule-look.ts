import type { RuleLook } from "../workbook/plan";
import { ruleLooks } from "../workbook/styles";

const looks = Object.keys(ruleLooks) as RuleLook[];

/** Which look of ours a conditional format has, told by the colour of its text; nothing for a look of the person's own. */
export function ruleLookOf(color: unknown): RuleLook | undefined {
  return looks.find((look) => ruleLooks[look].color === color);
}
