/**
 * Letters for treatment means: two means share a letter exactly when they are not clearly apart. Insert and absorb
 * (Piepho 2004): starting from one group of all, every pair that is apart splits the groups that hold both.
 *
 * @param differ whether two treatments, by number, are clearly apart
 * @param order treatments by number, best first; letters run in this order
 */
export function meanLetters(order: readonly number[], differ: (first: number, second: number) => boolean): string[] {
  let groups: readonly Group[] = [new Uint8Array(order.length).fill(1)];
  order.forEach((first, place) => {
    for (let next = place + 1; next < order.length; next++) {
      if (differ(first, order[next] ?? 0)) groups = splitAll(groups, place, next);
    }
  });
  const ranked = [...groups].sort(compareBySteps);
  const letters = order.map(() => "");
  ranked.forEach((group, index) => order.forEach((one, place) => group[place] && (letters[one] += letter(index))));
  return letters;
}

/** Which treatments are in a group, by their place in the order: 1 for those that are. */
type Group = Uint8Array;

/** Splits the groups that hold both; what then lies wholly inside another group is dropped. */
function splitAll(groups: readonly Group[], first: number, second: number): readonly Group[] {
  const whole = groups.filter((group) => !(group[first] && group[second]));
  const parts = groups.filter((group) => group[first] && group[second]);
  if (parts.length === 0) return groups;
  const kept = [...whole];
  for (const group of parts) {
    for (const gone of [second, first]) {
      const part = group.slice();
      part[gone] = 0;
      if (!kept.some((other) => isInside(part, other))) kept.push(part);
    }
  }
  return kept;
}

function isInside(group: Group, other: Group): boolean {
  for (let place = 0; place < group.length; place++) if (group[place] && !other[place]) return false;
  return true;
}

function compareBySteps(a: Group, b: Group): number {
  for (let place = 0; place < a.length; place++) {
    const difference = (b[place] ?? 0) - (a[place] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** a … z, then a2 … */
function letter(index: number): string {
  const round = Math.floor(index / 26);
  return String.fromCharCode(97 + (index % 26)) + (round === 0 ? "" : String(round + 1));
}
