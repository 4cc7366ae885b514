import { distance } from "fastest-levenshtein";

/**
 * The known word that a slip of the keys most likely meant: one wrong, missing, doubled or swapped letter in a word of
 * four, two in a word of eight. Of several as near, the one given first.
 */
export function nearestWord(typed: string, known: Iterable<string>): string | undefined {
  const most = typed.length >= 8 ? 2 : typed.length >= 4 ? 1 : 0;
  let best: string | undefined;
  let least = most + 1;
  for (const word of known) {
    if (Math.abs(word.length - typed.length) > most || word.length < 3) continue;
    const away = slips(typed, word);
    if (away < least) [best, least] = [word, away];
  }
  return best;
}

/** Two swapped neighbours are one slip, and a wrong first letter is rarer than any other. */
function slips(typed: string, word: string): number {
  const swapped = isSwapOf(typed, word) ? 1 : distance(typed, word);
  return typed[0] === word[0] ? swapped : swapped + 0.5;
}

function isSwapOf(one: string, other: string): boolean {
  if (one.length !== other.length) return false;
  const at = [...one].findIndex((letter, index) => letter !== other[index]);
  if (at < 0) return false;
  const swapped = one.slice(0, at) + (one[at + 1] ?? "") + (one[at] ?? "") + one.slice(at + 2);
  return swapped === other;
}
