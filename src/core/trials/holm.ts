/**
 * p-values adjusted for being several (Holm 1979): ranked from the smallest, each multiplied by the number not yet
 * judged, never falling, never above 1. In the order given.
 */
export function holmAdjusted(chances: readonly number[]): number[] {
  const order = chances.map((_, index) => index).sort((a, b) => (chances[a] ?? 0) - (chances[b] ?? 0));
  const adjusted = chances.map(() => 1);
  let largest = 0;
  order.forEach((index, rank) => {
    largest = Math.max(largest, Math.min(1, (chances.length - rank) * (chances[index] ?? 0)));
    adjusted[index] = largest;
  });
  return adjusted;
}
