import type { Argument } from "../../../../functions/frame/arguments";
import { families, type WorksheetFunction } from "../../../../functions/frame/declaration";
import type { Vocabulary } from "../../../../functions/frame/vocabulary";
import { words } from "../../../words";
import { stem, wordsIn } from "./stem";

/** Words of one place of a declaration, and how much a word found there tells. */
export interface Place {
  readonly weight: number;
  readonly words: readonly string[];
}

export interface Indexed {
  readonly fn: WorksheetFunction;
  readonly places: readonly Place[];
  /** The questions and column headings that find it, as stems of the words that count. */
  readonly phrases: readonly Phrase[];
}

export interface Phrase {
  readonly text: string;
  readonly stems: readonly string[];
}

/** Words from behind the declaration, found later: steps of its working, headings of sheets that use it. */
export interface DeepWords {
  readonly steps: readonly string[];
  readonly columns: readonly string[];
}

/** Everything that is searched, with how telling each word is. */
export interface SearchIndex {
  readonly entries: readonly Indexed[];
  /** Every stem that stands anywhere. */
  readonly known: ReadonlySet<string>;
  /** Words that slips of the keys are measured against, the most used first. */
  readonly lexicon: readonly string[];
  /** Rare words tell more than those that stand everywhere. */
  telling(stem: string): number;
}

/** What a word weighs by its place: what a person asks first, then the summary, at last the steps behind. */
const weights = { name: 10, phrase: 10, summary: 6, returns: 4, argument: 2.5, family: 2, accepted: 1, step: 0.5 };

export const idleWords: ReadonlySet<string> = new Set(words.search.idle.split(" "));

/** The stems of the words that say something. */
export function tellingStems(text: string): string[] {
  return wordsIn(text)
    .filter((word) => !idleWords.has(word))
    .map(stem);
}

export function indexOf(
  functions: readonly WorksheetFunction[],
  deep: ReadonlyMap<string, DeepWords> = new Map(),
): SearchIndex {
  const entries = functions.map((fn) => indexed(fn, deep.get(fn.name)));
  const uses = new Map<string, number>();
  for (const { places } of entries) {
    for (const word of new Set(places.flatMap((place) => place.words))) uses.set(word, (uses.get(word) ?? 0) + 1);
  }
  return {
    entries,
    known: new Set(uses.keys()),
    lexicon: lexiconOf(functions, uses),
    telling: (word) => Math.log(1 + entries.length / (uses.get(word) ?? 1)),
  };
}

function indexed(fn: WorksheetFunction, deep: DeepWords | undefined): Indexed {
  const args = Object.entries<Argument>(fn.args);
  const phrases = [...(fn.asks ?? []), ...(deep?.columns ?? [])].map((text) => ({ text, stems: tellingStems(text) }));
  return {
    fn,
    phrases,
    places: [
      place(weights.name, [fn.name.toLowerCase()]),
      place(
        weights.phrase,
        phrases.flatMap(({ stems }) => stems),
      ),
      place(weights.summary, tellingStems(fn.summary)),
      place(weights.returns, tellingStems(fn.returns.says)),
      place(
        weights.argument,
        args.flatMap(([name, { says }]) => tellingStems(`${name} ${says}`)),
      ),
      place(weights.family, tellingStems(families[fn.family])),
      place(
        weights.accepted,
        args.flatMap(([, argument]) => acceptedWords(argument)),
      ),
      place(weights.step, (deep?.steps ?? []).flatMap(tellingStems)),
    ],
  };
}

function place(weight: number, stems: readonly string[]): Place {
  return { weight, words: [...new Set(stems)] };
}

/** Many functions share a word list; each is taken apart once. */
const stemsOf = new WeakMap<Vocabulary<string>, readonly string[]>();

function acceptedWords({ vocabulary, orWords }: Argument): readonly string[] {
  return [vocabulary, orWords].flatMap((list) => (list ? listStems(list) : []));
}

function listStems(list: Vocabulary<string>): readonly string[] {
  const known = stemsOf.get(list);
  if (known) return known;
  const all = Object.values(list.words).flatMap(({ label, also }) => [label, ...also].flatMap(tellingStems));
  const stems = [...new Set(all)];
  stemsOf.set(list, stems);
  return stems;
}

/** The words of questions, summaries and arguments, as they are written. */
function lexiconOf(functions: readonly WorksheetFunction[], uses: ReadonlyMap<string, number>): readonly string[] {
  const texts = functions.flatMap((fn) => {
    const said = Object.entries<Argument>(fn.args).map(([name, { says }]) => `${name} ${says}`);
    return [...(fn.asks ?? []), fn.summary, fn.returns.says, families[fn.family], ...said];
  });
  const found = new Set(texts.flatMap(wordsIn).filter((word) => !idleWords.has(word)));
  const used = (word: string): number => uses.get(stem(word)) ?? 0;
  return [...found].sort((a, b) => used(b) - used(a));
}
