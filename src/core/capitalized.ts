/** The same words with a capital letter in front, to begin a sentence or a label. */
export function capitalized(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
