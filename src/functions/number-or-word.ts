import { parseNumber } from "./frame/parse-number";
import type { OneArgument, Vocabulary } from "./frame";

/** An argument that takes a number or, in its place, a word that stands for one. */
export function orWord<Word extends string, T>(
  number: OneArgument<number>,
  words: Vocabulary<Word>,
  as: { readonly ofNumber: (value: number) => T; readonly ofWord: (word: Word) => T },
): OneArgument<T> {
  return {
    ...number,
    orWords: words,
    read(cell, argument) {
      const word = typeof cell === "string" && !parseNumber(cell) ? words.find(cell) : undefined;
      return word === undefined ? as.ofNumber(number.read(cell, argument)) : as.ofWord(word);
    },
  };
}
