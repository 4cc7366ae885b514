import { countInWords } from "../../src/core/count-in-words";

it("has one cell and several cells", () => {
  expect([0, 1, 2].map((count) => countInWords(count, "cell"))).toEqual(["0 cells", "1 cell", "2 cells"]);
});
