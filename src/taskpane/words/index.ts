import { english } from "./english";

/** Every sentence of the pane, by part and key. Another language is a file of this shape. */
export type Words = typeof english;

const languages: Readonly<Record<string, Words>> = { en: english };

/** The words of a language tag such as "en-US"; English where the language is not there yet. */
export function wordsFor(tag: string): Words {
  return languages[tag.toLowerCase().split("-")[0] ?? ""] ?? english;
}

/** The words of the page's own language. */
export const words: Words = wordsFor(typeof document === "undefined" ? "" : document.documentElement.lang);
