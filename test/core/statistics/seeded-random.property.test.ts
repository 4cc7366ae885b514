import fc from "fast-check";
import { seededRandom } from "../../../src/core/statistics/seeded-random";

test("the same seed gives the same numbers", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1e9 }), (seed) => {
      const [first, second] = [seededRandom(seed), seededRandom(seed)];
      expect([first.uniform(), first.below(7)]).toEqual([second.uniform(), second.below(7)]);
    }),
  );
});

test("neighbouring seeds are as good as any: the first numbers of seeds 1 to 4,000 spread evenly", () => {
  const tenths = Array.from({ length: 10 }, () => 0);
  for (let seed = 1; seed <= 4000; seed++) {
    const tenth = Math.floor(seededRandom(seed).uniform() * 10);
    tenths[tenth] = (tenths[tenth] ?? 0) + 1;
  }
  // 400 expected in each; chi-squared with 9 df passes 27.9 once in a thousand times.
  expect(tenths.reduce((sum, count) => sum + (count - 400) ** 2 / 400, 0)).toBeLessThan(27.9);
});

test("each of the 24 orders of four items comes equally often over seeds", () => {
  const orders = new Map<string, number>();
  for (let seed = 1; seed <= 4800; seed++) {
    const order = seededRandom(seed).shuffled(["a", "b", "c", "d"]).join("");
    orders.set(order, (orders.get(order) ?? 0) + 1);
  }
  expect(orders.size).toBe(24);
  // 200 expected in each; chi-squared with 23 df passes 49.7 once in a thousand times.
  expect([...orders.values()].reduce((sum, count) => sum + (count - 200) ** 2 / 200, 0)).toBeLessThan(49.7);
});

test("shuffling leaves the given list alone", () => {
  const items = [1, 2, 3, 4, 5];
  expect(seededRandom(3).shuffled(items).sort()).toEqual(items);
  expect(items).toEqual([1, 2, 3, 4, 5]);
});
