import { element } from "../element";
import type { Choice } from "./choices";
import { hintId, refusalId, refusalLine } from "./field";

interface Select {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  /** Stands in the box until something is chosen. */
  readonly unchosen: string;
  readonly refusal?: string | undefined;
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly action: string;
}

/** One of a long list, with what the chosen one means in a line below the box. */
export function selectField({ id, label, hint, unchosen, refusal, choices, chosen, action }: Select): HTMLElement {
  const meaning = choices.find(({ value }) => value === chosen)?.hint;
  const described = [hintId(id), refusal && refusalId(id), meaning && meaningId(id)].filter(Boolean).join(" ");
  return element(
    "div",
    { class: refusal ? "field field-refused" : "field" },
    element("label", { for: id }, label),
    element("p", { class: "hint", id: hintId(id) }, hint),
    refusalLine(id, refusal),
    element(
      "select",
      { id, "aria-describedby": described, "aria-invalid": refusal ? "true" : undefined, "data-action": action },
      element("option", { value: "", selected: chosen === "" }, unchosen),
      choices.map((choice) =>
        element("option", { value: choice.value, selected: choice.value === chosen }, choice.label),
      ),
    ),
    meaning ? element("p", { class: "hint", id: meaningId(id) }, meaning) : undefined,
  );
}

function meaningId(id: string): string {
  return `${id}-meaning`;
}
