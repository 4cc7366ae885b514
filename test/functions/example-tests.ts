import type { WorksheetFunction } from "../../src/functions/frame";
import { explain } from "../../src/functions/frame/explain";
import { runFunction } from "../../src/functions/frame/run";

/** Every declaration carries a call with an answer worked by hand or printed; here it is run. */
export function exampleTests(fn: WorksheetFunction): void {
  it("answers its example", () => {
    const cells = runFunction(fn, fn.example.call);
    const gives = Array.isArray(fn.example.gives) ? fn.example.gives : [[fn.example.gives]];
    expect(cells.map((row) => row.length)).toEqual(gives.map((row: readonly unknown[]) => row.length));
    cells.forEach((row, r) => row.forEach((cell, c) => expectCell(fn, cell, gives[r]?.[c])));
  });
  it("shows the working of its example", () => {
    const shown = explain(fn, fn.example.call);
    expect(shown).not.toHaveProperty("because");
    if ("working" in shown) expect(shown.working.length).toBeGreaterThan(0);
  });
  it("waits for its first needed argument when everything is blank", () => {
    const needed = Object.values<{ shape: string }>(fn.args).some(({ shape }) => shape !== "optional");
    const cell = runFunction(fn, [])[0]?.[0];
    if (needed) expect(cell).toMatchObject({ code: "#N/A", message: expect.stringContaining("waiting for") });
  });
}

function expectCell(fn: WorksheetFunction, cell: unknown, gives: unknown): void {
  if (typeof gives !== "number") return expect(cell).toEqual(gives);
  expect(typeof cell).toBe("number");
  expect(Math.abs(Number(cell) - gives)).toBeLessThanOrEqual(fn.example.tolerance ?? 0.005);
}
