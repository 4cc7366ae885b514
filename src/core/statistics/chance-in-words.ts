/** "72 %" for a chance of 0 to 1, for sentences. Nothing that is guessed or measured is certain. */
export function chanceInWords(chance: number): string {
  if (chance > 0.99) return "over 99 %";
  return chance < 0.01 ? "under 1 %" : `${Math.round(chance * 100)} %`;
}
