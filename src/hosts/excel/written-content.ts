import { typedText } from "./typed-text";

export type Written = number | string | boolean;

/** A constant or a formula as it is written; text is protected from being read as a date or a number. */
export function writtenOf(content: Written | { readonly formula: string }): Written {
  if (typeof content === "string") return typedText(content);
  return typeof content === "object" ? content.formula : content;
}
