import type { NeedRule } from "../../../reference/guides";

/** Whether a rule has words for its zones; some guides print rates by test and name no classes. */
export function namesClasses({ form, classes }: NeedRule): boolean {
  if (classes) return true;
  if (form.kind === "classes") return form.classes[0]?.[0] !== "";
  return "zones" in form;
}
