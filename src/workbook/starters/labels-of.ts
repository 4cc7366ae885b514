import type { Vocabulary } from "../../functions/frame";

/** The words of a closed list as people read them, for a drop-down. */
export function labelsOf(words: Vocabulary<string>): string[] {
  return Object.values(words.words).map(({ label }) => label);
}
