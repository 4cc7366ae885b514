import { element } from "../element";
import { hintId, refusalId, refusalLine } from "./field";

export interface Choice {
  readonly value: string;
  readonly label: string;
  readonly hint?: string | undefined;
}

interface Choices {
  readonly id: string;
  readonly legend: string;
  readonly hint?: string | undefined;
  readonly refusal?: string | undefined;
  readonly choices: readonly Choice[];
  readonly chosen: string | undefined;
  readonly action: string;
}

/** One of several, each with a line that says what it means. The first carries the id, so that it can be gone to. */
export function radioGroup({ id, legend, hint, refusal, choices, chosen, action }: Choices): HTMLElement {
  const described = [hint && hintId(id), refusal && refusalId(id)].filter(Boolean).join(" ");
  return element(
    "fieldset",
    { class: refusal ? "choices field-refused" : "choices", "aria-describedby": described || undefined },
    element("legend", {}, legend),
    hint ? element("p", { class: "hint", id: hintId(id) }, hint) : undefined,
    refusalLine(id, refusal),
    choices.map((choice, index) =>
      choiceLine("radio", index === 0 ? id : `${id}-${choice.value}`, choice, {
        name: id,
        value: choice.value,
        checked: choice.value === chosen,
        "data-action": action,
      }),
    ),
  );
}

interface Tick extends Pick<Choice, "label" | "hint"> {
  readonly id: string;
  readonly ticked: boolean;
  readonly action: string;
  readonly dataValue?: string;
}

/** A box to tick. */
export function tickBox({ id, ticked, action, dataValue, ...choice }: Tick): HTMLElement {
  return choiceLine("checkbox", id, choice, { checked: ticked, "data-action": action, "data-value": dataValue });
}

function choiceLine(
  type: "radio" | "checkbox",
  id: string,
  { label, hint }: Pick<Choice, "label" | "hint">,
  attributes: Record<string, string | boolean | undefined>,
): HTMLElement {
  return element(
    "div",
    { class: "choice" },
    element("input", { type, id, "aria-describedby": hint ? hintId(`${id}-line`) : undefined, ...attributes }),
    element(
      "div",
      { class: "choice-words" },
      element("label", { for: id }, label),
      hint ? element("p", { class: "hint", id: hintId(`${id}-line`) }, hint) : undefined,
    ),
  );
}
