/**
 * Letters for treatment means: two means share a letter exactly when they are not clearly apart. Insert and absorb
 * (Piepho 2004): starting from one group of all, every pair that is apart splits the groups that hold both.
 *
 * @param differ whether two treatments, by number, are clearly apart
 * @param order treatments by number, best first; letters run in this order
 */
export function meanLetters(order: readonly number[], differ: (first: number, second: number) => boolean): string[] {
  let groups: (readonly number[])[] = [order];
  order.forEach((first, place) => {
    for (const second of order.slice(place + 1)) {
      if (differ(first, second)) groups = absorbed(groups.flatMap((group) => split(group, first, second)));
    }
  });
  const ranked = [...groups].sort((a, b) => compareBySteps(a, b, order));
  const letters = order.map(() => "");
  ranked.forEach((group, index) => group.forEach((treatment) => (letters[treatment] += letter(index))));
  return letters;
}

function split(group: readonly number[], first: number, second: number): (readonly number[])[] {
  if (!group.includes(first) || !group.includes(second)) return [group];
  return [group.filter((member) => member !== second), group.filter((member) => member !== first)];
}

/** Drops groups that lie wholly inside another. */
function absorbed(groups: readonly (readonly number[])[]): (readonly number[])[] {
  return groups.filter(
    (group, index) =>
      !groups.some(
        (other, place) =>
          place !== index &&
          group.every((member) => other.includes(member)) &&
          (other.length > group.length || place < index),
      ),
  );
}

function compareBySteps(a: readonly number[], b: readonly number[], order: readonly number[]): number {
  for (const treatment of order) {
    const difference = Number(b.includes(treatment)) - Number(a.includes(treatment));
    if (difference !== 0) return difference;
  }
  return 0;
}

/** a … z, then a2 … */
function letter(index: number): string {
  const round = Math.floor(index / 26);
  return String.fromCharCode(97 + (index % 26)) + (round === 0 ? "" : String(round + 1));
}
