import { english } from "./english";

/** Every sentence that a host shows, by host and key. Another language is a file of this shape. */
export type HostWords = typeof english;

const languages: Readonly<Record<string, HostWords>> = { en: english };

/** The words of a language tag such as "en-US"; English where the language is not there yet. */
function wordsFor(tag: string): HostWords {
  return languages[tag.toLowerCase().split("-")[0] ?? ""] ?? english;
}

/** The words of the page's own language; the functions run without a page. */
export const hostWords: HostWords = wordsFor(typeof document === "undefined" ? "" : document.documentElement.lang);
