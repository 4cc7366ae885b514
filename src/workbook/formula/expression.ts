import { literal } from "../../functions/frame/formula-text";
import { isReference, type Reference } from "./reference";

/** A formula, or a part of one, whose references are not addresses yet. Without the leading "=". */
export interface Expression {
  readonly parts: readonly (string | Reference)[];
}

/** What may stand as a value in a formula; a string is text, put in quotes. */
export type Term = Expression | Reference | number | string | boolean;

/** Words with sheet names in them, for a cell or a note: sheet names are only final after names were chosen. */
export interface Prose {
  readonly prose: readonly (string | Reference)[];
}

export type Text = string | Prose;

/**
 * A native formula with its references in place: formula`SUM(${fields.all("acres")})`. Strings put into the
 * template become quoted text.
 */
export function formula(strings: readonly string[], ...terms: readonly Term[]): Expression {
  return { parts: weave(strings, terms.map(partsOf)) };
}

/** Prose with sheet names: prose`Fill in ${sheetName("fields")} first.` */
export function prose(strings: readonly string[], ...references: readonly Reference[]): Prose {
  return {
    prose: weave(
      strings,
      references.map((reference) => [reference]),
    ),
  };
}

/** The parts of a term as they stand in a formula. */
export function partsOf(term: Term): readonly (string | Reference)[] {
  if (typeof term !== "object") return [literal(term)];
  return isReference(term) ? [term] : term.parts;
}

/** Terms with something between them, such as the arguments of a call. */
export function joined(terms: readonly Term[], between: string): Expression {
  return { parts: terms.flatMap((term, index) => (index === 0 ? partsOf(term) : [between, ...partsOf(term)])) };
}

export function isExpression(content: unknown): content is Expression {
  return typeof content === "object" && content !== null && "parts" in content;
}

export function isProse(content: unknown): content is Prose {
  return typeof content === "object" && content !== null && "prose" in content;
}

function weave(
  strings: readonly string[],
  terms: readonly (readonly (string | Reference)[])[],
): (string | Reference)[] {
  return strings.flatMap((text, index) => [text, ...(terms[index] ?? [])]).filter((part) => part !== "");
}
