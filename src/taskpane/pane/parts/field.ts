import { element, type Child } from "../element";

export interface TextField {
  readonly id: string;
  readonly label: Child;
  readonly text: string;
  /** Stands behind the field, such as "$/bu". */
  readonly unit?: string;
  readonly hint?: string;
  /** The sentence that says what does not fit. */
  readonly refusal?: string | undefined;
  readonly numeric?: boolean;
  /** Names of the actions on typing and on leaving; data-value tells fields of one action apart. */
  readonly action: string;
  readonly leave?: string;
  readonly value?: string;
}

/** A labelled field with its unit, a hint and, where something does not fit, the sentence that says so. */
export function textField(field: TextField): HTMLElement {
  const { id, hint, refusal, unit } = field;
  const described = [hint && hintId(id), unit && unitId(id), refusal && refusalId(id)].filter(Boolean).join(" ");
  return element(
    "div",
    { class: refusal ? "field field-refused" : "field" },
    element("label", { for: id }, field.label),
    hint ? element("p", { class: "hint", id: hintId(id) }, hint) : undefined,
    refusalLine(id, refusal),
    element(
      "div",
      { class: "field-line" },
      element("input", {
        id,
        type: "text",
        class: field.numeric ? "number" : "words",
        value: field.text,
        autocomplete: "off",
        inputmode: field.numeric ? "decimal" : undefined,
        "aria-describedby": described || undefined,
        "aria-invalid": refusal ? "true" : undefined,
        "data-action": field.action,
        "data-leave": field.leave,
        "data-value": field.value,
      }),
      unit ? element("span", { class: "unit", id: unitId(id) }, unit) : undefined,
    ),
  );
}

/** A place to choose a workbook file; the action receives the file. */
export function fileField(id: string, label: string, action: string): HTMLElement {
  return element(
    "div",
    { class: "field" },
    element("label", { for: id }, label),
    element("input", { id, type: "file", accept: ".xlsx", "data-action": action }),
  );
}

/** The sentence tied to a field, or nothing. */
export function refusalLine(id: string, refusal: string | undefined): Child {
  return refusal ? element("p", { class: "refusal", id: refusalId(id) }, sign(), refusal) : undefined;
}

/**
 * Says aloud what does not fit while a person goes on to the next field, each sentence once, when it comes up. It stands
 * in the view before there is anything to say; those who see read the same sentences at their fields.
 */
export function refusalsAloud(refusals: readonly (string | undefined)[]): HTMLElement {
  return element(
    "div",
    { role: "status", "aria-atomic": "false", class: "unseen refusals-aloud" },
    [...new Set(refusals)].map((refusal) => (refusal ? element("p", {}, refusal) : undefined)),
  );
}

export function refusalId(id: string): string {
  return `${id}-refusal`;
}

export function hintId(id: string): string {
  return `${id}-hint`;
}

export function unitId(id: string): string {
  return `${id}-unit`;
}

/** Marks a refusal by shape as well as by colour. */
function sign(): HTMLElement {
  return element("span", { class: "sign", "aria-hidden": "true" }, "▲ ");
}
