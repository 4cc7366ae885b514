import type { WorksheetFunction } from "../../../../functions/frame/declaration";
import { words } from "../../../words";
import { nearestWord } from "./nearest-word";
import { idleWords, type Indexed, type Phrase, type SearchIndex } from "./search-index";
import { stem, wordsIn } from "./stem";

/** One function that answers, with the question or heading that comes closest to what was asked. */
export interface Found {
  readonly fn: WorksheetFunction;
  readonly phrase?: string | undefined;
}

export interface SearchResult {
  readonly found: readonly Found[];
  /** Words that stand nowhere, with the ones taken in their place. */
  readonly readAs: readonly { readonly typed: string; readonly taken: string }[];
}

/** A word that is looked for. */
interface Wanted {
  /** The stems that answer it, itself first of all, with how well they do. */
  readonly answers: ReadonlyMap<string, number>;
  readonly telling: number;
}

/** What a word of the same meaning counts beside the word itself. */
const alikeShare = 0.6;

/** A word as close as this says the same. */
const sameWord = 0.8;

interface Scored extends Found {
  readonly score: number;
  readonly order: number;
}

/** A phrase that holds so much of the question is worth showing beside its function. */
const closePhrase = 0.6;

/** At least this share of what was asked has to be answered. */
const leastShare = 0.35;

/** Functions that answer a question in plain words, best first. Nothing asked gives all, in their order. */
export function searchFunctions(index: SearchIndex, query: string): SearchResult {
  const asked = wordsIn(query);
  const telling = asked.filter((word) => !idleWords.has(word));
  if (asked.length === 0) return { found: index.entries.map(({ fn }) => ({ fn })), readAs: [] };
  const readAs: { typed: string; taken: string }[] = [];
  const wanted = telling.map((word) => {
    const isKnown = answersTo(index, stem(word), 1).size > 0;
    const taken = isKnown ? undefined : nearestWord(word, index.lexicon);
    if (taken !== undefined) readAs.push({ typed: word, taken });
    return wantedWord(index, stem(taken ?? word));
  });
  const found = index.entries
    .map((entry, order) => ({ order, ...scoreOf(entry, wanted, asked.join("")) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score || a.order - b.order);
  return { found: enough(found), readAs };
}

/** What is far behind the best answers only by a common word is no answer. */
function enough(found: readonly Scored[]): readonly Found[] {
  const best = found[0]?.score ?? 0;
  return found.filter(({ score }) => score >= best / 6).map(({ fn, phrase }) => ({ fn, phrase }));
}

function wantedWord(index: SearchIndex, word: string): Wanted {
  const alike = words.search.alike.find((group) => group.some((one) => stem(one) === word)) ?? [];
  const answers = answersTo(index, word, 1);
  for (const other of alike.map(stem).filter((one) => one !== word)) {
    for (const [here, close] of answersTo(index, other, alikeShare)) {
      answers.set(here, Math.max(close, answers.get(here) ?? 0));
    }
  }
  return { answers, telling: tellingOf(answers, index) };
}

/** How telling a word is by what answers it best. One that stands nowhere tells nothing: the others still may. */
function tellingOf(answers: ReadonlyMap<string, number>, index: SearchIndex): number {
  const closest = Math.max(0, ...answers.values());
  const best = [...answers].filter(([, close]) => close === closest);
  return best.length === 0 ? 0 : Math.min(...best.map(([here]) => index.telling(here)));
}

function answersTo({ known }: SearchIndex, word: string, share: number): Map<string, number> {
  const answers = new Map<string, number>();
  for (const here of known) {
    const close = closeness(word, here);
    if (close > 0) answers.set(here, close * share);
  }
  return answers;
}

/**
 * Each word counts by how telling it is, by the best place it stands in and by how well it fits there; a question of
 * the function that says the same as the person adds to that.
 */
function scoreOf(entry: Indexed, wanted: readonly Wanted[], squeezed: string): Found & { score: number } {
  const { fn } = entry;
  const named = nameScore(fn.name.toLowerCase(), squeezed);
  const all = wanted.reduce((sum, { telling }) => sum + telling, 0);
  let answered = 0;
  let sum = 0;
  for (const word of wanted) {
    const best = bestPlace(entry, word);
    if (best > 0) answered += word.telling;
    sum += best * word.telling;
  }
  const share = all === 0 ? 0 : answered / all;
  if (share < leastShare && named === 0) return { fn, score: 0 };
  const { phrase, fit } = bestPhrase(entry.phrases, wanted);
  const score = (sum / Math.max(all, 1)) * share + 20 * fit * fit + named;
  return { fn, score, phrase: fit >= closePhrase ? phrase?.text : undefined };
}

/** A name typed whole or begun comes before anything else. */
function nameScore(name: string, squeezed: string): number {
  if (name === squeezed) return 1000;
  return squeezed.length >= 4 && name.startsWith(squeezed) ? 30 : 0;
}

function bestPlace({ places }: Indexed, { answers }: Wanted): number {
  let best = 0;
  for (const { weight, words: here } of places) {
    if (weight <= best) continue;
    for (const word of here) best = Math.max(best, weight * (answers.get(word) ?? 0));
  }
  return best;
}

/** How much of the question a phrase says, and of the phrase the question: 1 where they say the same. */
function bestPhrase(phrases: readonly Phrase[], wanted: readonly Wanted[]): { phrase?: Phrase; fit: number } {
  let best: { phrase?: Phrase; fit: number } = { fit: 0 };
  for (const phrase of phrases) {
    const held = wanted.filter((word) => phrase.stems.some((here) => says(word, here)));
    if (held.length === 0) continue;
    const told = phrase.stems.filter((here) => wanted.some((word) => says(word, here)));
    const parts = wanted.reduce((sum, { telling }) => sum + telling, 0);
    const share = parts === 0 ? 0 : held.reduce((sum, { telling }) => sum + telling, 0) / parts;
    const back = phrase.stems.length === 0 ? 0 : told.length / phrase.stems.length;
    const fit = share + back === 0 ? 0 : (2 * share * back) / (share + back);
    if (fit > best.fit) best = { phrase, fit };
  }
  return best;
}

/** Whether a word of a phrase is the one wanted, or one of the same meaning. */
function says({ answers }: Wanted, here: string): boolean {
  return (answers.get(here) ?? 0) >= sameWord * alikeShare;
}

/** 1 for the same word, less for a beginning, a longer form or a part of a joined name, 0 for another word. */
function closeness(wanted: string, here: string): number {
  if (wanted === here) return 1;
  if (wanted.length >= 3 && here.startsWith(wanted)) return here.length - wanted.length <= 3 ? 0.8 : 0.6;
  if (here.length >= 4 && wanted.startsWith(here) && wanted.length - here.length <= 3) return 0.7;
  return wanted.length >= 4 && here.includes(wanted) ? 0.5 : 0;
}
