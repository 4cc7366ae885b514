import { integrate, quadratureNodes } from "../../../src/core/statistics/gauss-legendre";

it("is exact for powers up to the 31st, as 16 points are", () => {
  for (const power of [0, 1, 2, 7, 16, 31]) {
    // ∫ x^n from 0 to 2 is 2^(n+1) / (n+1)
    const exact = 2 ** (power + 1) / (power + 1);
    expect(integrate((x) => x ** power, [0, 2]) / exact).toBeCloseTo(1, 13);
  }
});

it("adds up its pieces, backwards and empty ones too", () => {
  expect(integrate((x) => x * x, [0, 1, 3])).toBeCloseTo(9, 12);
  expect(integrate((x) => x * x, [3, 0])).toBeCloseTo(-9, 12);
  expect(integrate(() => 1, [2])).toBe(0);
});

it("has 16 points inside each piece, whose weights are its length", () => {
  const nodes = quadratureNodes([-1, 1, 5]);
  expect(nodes.map(({ at }) => at > -1 && at < 5)).toEqual(Array(32).fill(true));
  expect(nodes.slice(16).reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(4, 13);
});
