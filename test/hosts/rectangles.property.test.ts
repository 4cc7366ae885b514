import fc from "fast-check";
import { rectanglesOf } from "../../src/hosts/rectangles";

// A small sheet: larger ones only repeat its cases.
const cells = fc.uniqueArray(fc.record({ row: fc.nat(7), column: fc.nat(7) }), {
  selector: ({ row, column }) => `${row},${column}`,
});

describe("rectanglesOf", () => {
  it("covers every cell once and no other cell", () => {
    fc.assert(
      fc.property(cells, (given) => {
        const covered: string[] = [];
        for (const { top, left, bottom, right } of rectanglesOf(given)) {
          for (let row = top; row <= bottom; row++) {
            for (let column = left; column <= right; column++) covered.push(`${row},${column}`);
          }
        }
        expect(covered.sort()).toEqual(given.map(({ row, column }) => `${row},${column}`).sort());
      }),
    );
  });

  it("makes one rectangle of a full block", () => {
    const block = [0, 1, 2].flatMap((row) => [3, 4].map((column) => ({ row, column })));
    expect(rectanglesOf(block)).toEqual([{ top: 0, bottom: 2, left: 3, right: 4 }]);
  });
});
