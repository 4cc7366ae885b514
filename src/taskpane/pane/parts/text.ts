import { element, type Child } from "../element";
import type { View } from "../state";

/** The heading of a view; it takes the focus when the view opens. */
export function viewHeading(view: View | "function", text: Child): HTMLElement {
  return element("h2", { id: headingId(view), tabindex: -1 }, text);
}

export function headingId(view: View | "function"): string {
  return `${view}-heading`;
}

/** A part of a view under its own small head. */
export function section(id: string, head: string, ...children: readonly Child[]): HTMLElement {
  return element("section", { "aria-labelledby": id }, element("h3", { id }, head), ...children);
}

/** Something to mind at the place of use: label, local rule, licensed practice. */
export function caution(text: string): HTMLElement {
  return element("p", { class: "caution" }, element("span", { class: "sign", "aria-hidden": "true" }, "▲ "), text);
}

/** A call as code; a long one breaks after its brackets and commas. */
export function formulaCode(call: string): HTMLElement {
  const parts = call.split(/(?<=[(,{;])/);
  return element(
    "code",
    {},
    parts.flatMap((part, index) => (index === 0 ? [part] : [element("wbr"), part])),
  );
}

/** A phrase of a declaration as a sentence: a capital in front and a full stop behind. */
export function sentence(text: string): string {
  const upper = /^pH\b/.test(text) ? text : text.charAt(0).toUpperCase() + text.slice(1);
  return /[.?]$/.test(upper) ? upper : `${upper}.`;
}
