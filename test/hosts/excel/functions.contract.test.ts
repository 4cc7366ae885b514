import vm from "node:vm";
import { allFunctions } from "../../../src/functions";
import type { Argument, WorksheetFunction } from "../../../src/functions/frame";
import type { CellIn, Matrix } from "../../../src/functions/frame/cell";
import { functionsBundle } from "./functions-bundle";
import { callFunctions, type FunctionCall, type FunctionResult } from "./genuine-functions";
import { loadOffice, type GenuineOffice } from "./genuine-office";

let office: GenuineOffice;
let bundle: string;

beforeAll(async () => {
  bundle = await functionsBundle();
  office = await loadOffice();
  office.window.eval(bundle);
}, 120_000);
afterAll(() => office.close());

/** Arguments as Excel hands them over: a range each, null for those left out. */
function callOf(fn: WorksheetFunction, given: readonly (CellIn | Matrix<CellIn> | undefined)[]): FunctionCall {
  const args = Object.keys(fn.args).map((_, index) => {
    const value = given[index];
    if (value === undefined) return null;
    return Array.isArray(value) ? (value as Matrix<CellIn>) : [[value as CellIn]];
  });
  return { name: fn.name, args };
}

const argumentsOf = (fn: WorksheetFunction): [string, Argument][] => Object.entries(fn.args);

/** The example of a function with one argument replaced. */
function exampleWith(fn: WorksheetFunction, index: number, cell: CellIn): FunctionCall {
  return callOf(
    fn,
    Object.keys(fn.args).map((_, at) => (at === index ? cell : fn.example.call[at])),
  );
}

/** Nothing that a spreadsheet would show as 0 or not at all. */
function expectSound(call: FunctionCall, result: FunctionResult): void {
  if ("thrown" in result) {
    expect([call, result]).toEqual([call, expect.objectContaining({ thrown: expect.stringMatching(/^#/) })]);
    return;
  }
  const rows = result.cells as unknown[][]; // checked here
  expect(Array.isArray(rows) && rows.length > 0 && rows.every((row) => Array.isArray(row))).toBe(true);
  expect(new Set(rows.map((row) => row.length)).size).toBe(1);
  for (const cell of rows.flat()) {
    const kind = typeof cell === "object" && cell !== null ? (cell as { type?: unknown }).type : typeof cell;
    expect([call, ["number", "string", "boolean", "Error"].includes(String(kind))]).toEqual([call, true]);
  }
}

describe("the functions in Excel's own runtime", () => {
  it("are all associated, once, under their id", () => {
    const associated: string[] = [];
    const CustomFunctions = { associate: (id: string) => associated.push(id) };
    // Nothing but this object is there: no page, no Office.
    vm.runInNewContext(bundle, { CustomFunctions });
    expect(associated).toEqual(allFunctions.map(({ name }) => name));
    expect(new Set(associated).size).toBe(allFunctions.length);
  });

  it("answer their examples", async () => {
    const results = await callFunctions(
      office,
      allFunctions.map((fn) => callOf(fn, fn.example.call)),
    );
    allFunctions.forEach(({ name, example: { gives, tolerance = 0.005 } }, index) => {
      const wanted: Matrix<number | string> = Array.isArray(gives) ? gives : [[gives as number | string]];
      const result = results[index];
      expect([name, result]).toEqual([name, { cells: expect.anything() }]);
      const cells = (result as { cells: unknown[][] }).cells; // just checked
      wanted.forEach((row, down) =>
        row.forEach((value, across) => {
          const cell = cells[down]?.[across];
          if (typeof value !== "number") return expect([name, cell]).toEqual([name, value]);
          expect([name, typeof cell === "number" && Math.abs(cell - value) <= tolerance ? value : cell]).toEqual([
            name,
            value,
          ]);
        }),
      );
    });
  });

  it("wait for inputs that are blank, whichever way Excel says blank", async () => {
    const needing = allFunctions.filter((fn) => argumentsOf(fn).some(([, { shape }]) => shape !== "optional"));
    for (const blank of [null, ""] as const) {
      const calls = needing.map((fn) =>
        callOf(
          fn,
          Object.keys(fn.args).map(() => blank),
        ),
      );
      const results = await callFunctions(office, calls);
      results.forEach((result, index) => {
        const { name } = calls[index] ?? { name: "" };
        expect([name, result]).toEqual([name, { thrown: "#N/A", message: expect.stringMatching(/^waiting for /) }]);
      });
    }
  });

  it("name the input where a word stands for a number", async () => {
    const cases = allFunctions.flatMap((fn) =>
      argumentsOf(fn).flatMap(([name, { shape, limit, vocabulary }], index) =>
        limit && !vocabulary && shape === "one" ? [{ name, call: exampleWith(fn, index, "plenty") }] : [],
      ),
    );
    expect(cases.length).toBeGreaterThan(0);
    const results = await callFunctions(
      office,
      cases.map(({ call }) => call),
    );
    results.forEach((result, index) => {
      const { call, name } = cases[index] ?? { call: undefined, name: "" };
      expect([call?.name, name, result]).toEqual([
        call?.name,
        name,
        { thrown: "#VALUE!", message: expect.stringMatching(new RegExp(`^${name}\\b.*"plenty"`)) },
      ]);
    });
  });

  it.each([
    ["#DIV/0!", "#DIV/0!", ""],
    ["#NUM!", "#NUM!", ""],
    ["#N/A", "#N/A", ""],
    ["#REF!", "#VALUE!", "One of its cells shows #REF!: mend that cell first."],
    ["#NAME?", "#VALUE!", "One of its cells shows #NAME?: mend that cell first."],
  ] as const)("pass on %s that arrives in an input", async (code, thrown, message) => {
    const calls = allFunctions.flatMap((fn) =>
      argumentsOf(fn).flatMap(([, { shape }], index) => (shape === "one" ? [exampleWith(fn, index, { code })] : [])),
    );
    const results = await callFunctions(office, calls);
    results.forEach((result, index) => {
      const call = calls[index];
      if ("cells" in result && call) return expectSound(call, result);
      expect([call, result]).toEqual([call, { thrown, message }]);
    });
  });

  it("return nothing that a spreadsheet would show as 0, whatever one input holds", async () => {
    const strange: CellIn[] = [0, -1, 1e300, true, "", "plenty", "#", { code: "#N/A" }];
    const calls = allFunctions.flatMap((fn) =>
      argumentsOf(fn).flatMap((_, index) => strange.map((cell) => exampleWith(fn, index, cell))),
    );
    const results = await callFunctions(office, calls);
    results.forEach((result, index) => {
      const call = calls[index];
      if (call) expectSound(call, result);
    });
  }, 60_000);

  it("give one error cell for one bad row, with its sentence", async () => {
    const fn = allFunctions.find(
      ({ returns, args }) => returns.shape === "one" && Object.values<Argument>(args)[0]?.limit !== undefined,
    );
    const [first] = fn ? fn.example.call : [];
    if (fn === undefined || typeof first !== "number") throw new Error("no function to try this with");
    const call = callOf(fn, [[[first], ["plenty"], [first]], ...fn.example.call.slice(1)]);
    const [result] = await callFunctions(office, [call]);
    expect(result).toEqual({
      cells: [
        [expect.any(Number)],
        [expect.objectContaining({ type: "Error", basicValue: "#VALUE!", message: expect.stringContaining("plenty") })],
        [expect.any(Number)],
      ],
    });
  });
});
