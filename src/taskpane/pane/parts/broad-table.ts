import { element, type Child } from "../element";

interface BroadTable {
  /** What the part that is pushed sideways is called. */
  readonly label: string;
  /** Class of the table. */
  readonly look: string;
  readonly caption?: string;
  /** Cells of the head. */
  readonly head?: readonly HTMLElement[];
  readonly rows: readonly HTMLElement[];
}

/** A table that may be broader than the pane: it is pushed sideways by itself, by keyboard as well. */
export function broadTable({ label, look, caption, head, rows }: BroadTable): HTMLElement {
  return element(
    "div",
    { class: "scroll", tabindex: 0, role: "group", "aria-label": label },
    element(
      "table",
      { class: look },
      caption !== undefined && element("caption", { class: "hint" }, caption),
      head && element("thead", {}, element("tr", {}, head)),
      element("tbody", {}, rows),
    ),
  );
}

/** The head of a column. */
export function columnHead(text: Child): HTMLElement {
  return element("th", { scope: "col" }, text);
}
