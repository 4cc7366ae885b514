import type { Text } from "../formula/expression";
import type { ParagraphsBlock } from "./block";

/** How a sheet is to be read, and what is not in it. */
export function remarks(...paragraphs: readonly Text[]): ParagraphsBlock {
  return { kind: "paragraphs", style: "says", paragraphs };
}

/** What has to be heeded before anything is done. */
export function cautions(...paragraphs: readonly Text[]): ParagraphsBlock {
  return { kind: "paragraphs", style: "caution", paragraphs };
}
