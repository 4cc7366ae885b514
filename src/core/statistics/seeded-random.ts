import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { mersenne } from "pure-rand/generator/mersenne";

/** Numbers that look random and are the same every time for the same seed. */
export interface SeededRandom {
  /** 0 or more, below 1. */
  uniform(): number;
  /** A whole number from 0 to below `count`, each equally likely. */
  below(count: number): number;
  /** The items in a fair random order (Fisher–Yates); the given list stays as it is. */
  shuffled<T>(items: readonly T[]): T[];
}

/** @param seed a whole number; a worksheet asks for it so that a recalculation gives the same answer */
export function seededRandom(seed: number): SeededRandom {
  const generator = mersenne(seed);
  const below = (count: number) => uniformInt(generator, 0, count - 1);
  return {
    uniform: () => uniformFloat64(generator),
    below,
    shuffled: (items) => shuffle(items, below),
  };
}

function shuffle<T>(items: readonly T[], below: (count: number) => number): T[] {
  const left = [...items];
  return items.flatMap(() => left.splice(below(left.length), 1));
}
