import { element, type Child } from "../element";

interface Question {
  /** Of the sentence, which takes the focus when it comes up. */
  readonly id: string;
  readonly asks: string;
  /** What exactly would be done. */
  readonly details?: Child;
  readonly yes: HTMLButtonElement;
  readonly no: HTMLButtonElement;
}

/** Something asked before it is done. Escape says no. */
export function question({ id, asks, details, yes, no }: Question): HTMLElement {
  return element(
    "div",
    { class: "question", "data-escape": no.dataset.action, "data-value": no.dataset.value },
    element("p", { id, tabindex: -1 }, asks),
    details,
    element("div", { class: "side-by-side" }, yes, no),
  );
}
