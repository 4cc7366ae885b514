import fc from "fast-check";
import { allFunctions } from "../../src/functions";
import { isCellError } from "../../src/functions/frame";
import { runFunction } from "../../src/functions/frame/run";
import { anyCall } from "./any-call";

describe.each(allFunctions.map((fn) => [fn.name, fn] as const))("%s, called with anything", (_name, fn) => {
  it("answers a rectangle of finite numbers, text, booleans or errors of the four kinds", () => {
    fc.assert(
      fc.property(anyCall(fn), (call) => {
        const cells = runFunction(fn, call);
        const width = cells[0]?.length;
        expect(width).toBeGreaterThan(0);
        for (const row of cells) {
          expect(row).toHaveLength(width ?? 0);
          for (const cell of row) {
            if (isCellError(cell)) {
              expect(cell.code).toMatch(/^#(N\/A|VALUE!|NUM!|DIV\/0!)$/);
              expect(cell.message ?? "passed on").not.toMatch(/^$|itself went wrong|undefined|NaN/);
            } else if (typeof cell === "number") expect(Number.isFinite(cell)).toBe(true);
            else expect(["string", "boolean"]).toContain(typeof cell);
          }
        }
      }),
      { numRuns: 300, seed: 20 },
    );
  });
  it("answers the same twice", () => {
    fc.assert(
      fc.property(anyCall(fn), (call) => expect(runFunction(fn, call)).toEqual(runFunction(fn, call))),
      { numRuns: 30, seed: 21 },
    );
  });
});
