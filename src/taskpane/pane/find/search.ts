import { distance } from "fastest-levenshtein";
import { families, type WorksheetFunction } from "../../../functions/frame/declaration";
import type { Argument } from "../../../functions/frame/arguments";

interface Place {
  readonly weight: number;
  readonly words: readonly string[];
}

/** Words that say nothing about what is looked for. */
const idle = new Set(
  "a an and any are at be by can do does for from get have how i if in is it many me more much my need of on or our per should so some than that the them then there to up use want was we what when where which will with without would you your".split(
    " ",
  ),
);

const indexed = new WeakMap<WorksheetFunction, readonly Place[]>();

/**
 * Functions that match what is asked for in plain words, best first. A function counts by how many of the words it
 * answers, then by where they stand: its name weighs most, then its summary, then its arguments.
 */
export function searchFunctions(functions: readonly WorksheetFunction[], query: string): WorksheetFunction[] {
  const asked = wordsOf(query);
  const wanted = asked.filter((word) => !idle.has(word));
  if (wanted.length === 0) return asked.length === 0 ? [...functions] : [];
  return functions
    .map((fn, order) => ({ fn, order, ...match(placesOf(fn), wanted) }))
    .filter(({ answered }) => answered > 0 && answered >= wanted.length / 2)
    .sort((a, b) => b.answered - a.answered || b.score - a.score || a.order - b.order)
    .map(({ fn }) => fn);
}

function match(places: readonly Place[], wanted: readonly string[]): { answered: number; score: number } {
  let answered = 0;
  let score = 0;
  for (const word of wanted) {
    let best = 0;
    for (const { weight, words } of places) {
      for (const here of words) best = Math.max(best, weight * closeness(word, here));
    }
    if (best > 0) answered += 1;
    score += best;
  }
  return { answered, score };
}

/** 1 for the same word, less for a beginning, a part of a joined name or a slip of one letter, 0 for another word. */
function closeness(wanted: string, here: string): number {
  if (wanted === here) return 1;
  if (wanted.length >= 3 && here.startsWith(wanted)) return 0.8;
  if (wanted.length >= 4 && here.length >= 4 && wanted.startsWith(here)) return 0.6;
  if (wanted.length >= 4 && here.includes(wanted)) return 0.6;
  return wanted.length >= 5 && isSlipOf(wanted, here) ? 0.45 : 0;
}

/** One wrong letter in a word or in the beginning of a joined name; the first letter has to be right. */
function isSlipOf(wanted: string, here: string): boolean {
  if (wanted[0] !== here[0]) return false;
  return distance(wanted, here) === 1 || distance(wanted, here.slice(0, wanted.length)) === 1;
}

function placesOf(fn: WorksheetFunction): readonly Place[] {
  const known = indexed.get(fn);
  if (known) return known;
  const args = Object.entries<Argument>(fn.args);
  const places = [
    { weight: 10, words: wordsOf(fn.name) },
    { weight: 6, words: wordsOf(fn.summary) },
    { weight: 4, words: wordsOf(fn.returns.says) },
    { weight: 3, words: wordsOf(families[fn.family]) },
    { weight: 2, words: args.flatMap(([name, { says }]) => [...wordsOf(splitCamel(name)), ...wordsOf(says)]) },
    { weight: 1, words: args.flatMap(([, argument]) => acceptedWords(argument)) },
  ];
  indexed.set(fn, places);
  return places;
}

function acceptedWords({ vocabulary }: Argument): string[] {
  return vocabulary
    ? Object.values(vocabulary.words).flatMap(({ label, also }) => [label, ...also].flatMap(wordsOf))
    : [];
}

function splitCamel(name: string): string {
  return name.replace(/([a-z])([A-Z])/g, "$1 $2");
}

/** Lower case, letters and digits, without the plural s. */
function wordsOf(text: string): string[] {
  return (text.toLowerCase().match(/[a-z0-9]+/g) ?? []).map((word) =>
    word.length > 3 ? word.replace(/(?<!s)s$/, "") : word,
  );
}
