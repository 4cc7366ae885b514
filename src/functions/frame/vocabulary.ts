import { distance } from "fastest-levenshtein";

/** One accepted word with the other ways people write it. */
export interface Word {
  readonly label: string;
  readonly also: readonly string[];
}

/** A closed list of words that an argument accepts, forgiving about case, plurals, spaces and synonyms. */
export interface Vocabulary<Key extends string> {
  /** What one entry is called, such as "crop". */
  readonly name: string;
  readonly words: Readonly<Record<Key, Word>>;
  find(text: string): Key | undefined;
  /** The labels nearest to a text, best first. */
  nearest(text: string): readonly string[];
}

export function vocabulary<Key extends string>(name: string, words: Readonly<Record<Key, Word>>): Vocabulary<Key> {
  let index: Map<string, Key> | undefined;
  const seen = new Map<string, Key | undefined>();
  return {
    name,
    words,
    find(text) {
      const known = seen.get(text);
      if (known !== undefined || seen.has(text)) return known;
      index ??= indexOf(words);
      const found = index.get(fold(text)) ?? index.get(singular(fold(text)));
      if (seen.size < 1000) seen.set(text, found);
      return found;
    },
    nearest: (text) => nearestLabels(words, text),
  };
}

function indexOf<Key extends string>(words: Readonly<Record<Key, Word>>): Map<string, Key> {
  const index = new Map<string, Key>();
  for (const key of keysOf(words)) {
    for (const spelling of [key, words[key].label, ...words[key].also]) {
      index.set(fold(spelling), key);
      index.set(singular(fold(spelling)), key);
    }
  }
  return index;
}

/** Lower case, letters and digits only (plus "+", which joins parts such as grain+straw). */
function fold(text: string): string {
  return text
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9+]/g, "");
}

function singular(folded: string): string {
  return folded.length > 3 ? folded.replace(/(?<!s)s$/, "") : folded;
}

function nearestLabels<Key extends string>(words: Readonly<Record<Key, Word>>, text: string): string[] {
  const wanted = fold(text);
  return keysOf(words)
    .map((key) => ({
      label: words[key].label,
      away: Math.min(
        ...[key, words[key].label, ...words[key].also].map((spelling) => awayFrom(wanted, fold(spelling))),
      ),
    }))
    .sort((a, b) => a.away - b.away)
    .slice(0, 5)
    .map(({ label }) => label);
}

/** Edit distance relative to length; a spelling that starts with the text counts as near. */
function awayFrom(wanted: string, spelling: string): number {
  const edits = distance(wanted, spelling) / Math.max(wanted.length, spelling.length, 1);
  return wanted !== "" && spelling.startsWith(wanted) ? edits / 4 : edits;
}

function keysOf<Key extends string>(words: Readonly<Record<Key, Word>>): Key[] {
  return Object.keys(words) as Key[];
}
