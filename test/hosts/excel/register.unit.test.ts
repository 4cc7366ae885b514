import { line, list, quantity, worksheetFunction, type CellOut, type Matrix } from "../../../src/functions/frame";
import { allFunctions } from "../../../src/functions";
import { limits } from "../../../src/core/limits";
import { excelFunction, register, registeredFunctions, type FunctionRuntime } from "../../../src/hosts/excel/register";

class RuntimeError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

const runtime = {
  associate: () => undefined,
  Error: RuntimeError,
  ErrorCode: {
    invalidValue: "#VALUE!",
    notAvailable: "#N/A",
    invalidNumber: "#NUM!",
    divisionByZero: "#DIV/0!",
    nullReference: "#NULL!",
  },
} as unknown as FunctionRuntime; // as much of the runtime as is used

/** A table function that gives whatever it is told to. */
function giving(table: Matrix<CellOut>) {
  return worksheetFunction({
    name: "ANYTABLE",
    family: "units",
    summary: "Any table.",
    args: { acres: list(quantity(limits.acres, { says: "acres" }), { says: "acres", atLeast: 0 }) },
    returns: { shape: "table", unit: "", says: "any table" },
    sources: [],
    example: { call: [1], gives: 1, because: "not used" },
    compute: () => table,
    value: (result) => result,
    working: () => [line("nothing", 0)],
  });
}

const call = (table: Matrix<CellOut>) => excelFunction(giving(table), runtime)([[1]]);

describe("a function as Excel calls it", () => {
  it("returns a rectangle even for one cell", () => {
    expect(call([[3]])).toEqual([[3]]);
  });

  it("throws a lone error, so that its sentence reaches the cell", () => {
    expect(() => call([[{ code: "#N/A", message: "waiting for acres" }]])).toThrow(
      expect.objectContaining({ code: "#N/A", message: "waiting for acres" }),
    );
  });

  it("returns errors among other cells in their place", () => {
    expect(call([[1, { code: "#DIV/0!" }]])).toEqual([[1, new RuntimeError("#DIV/0!")]]);
  });

  it("never returns an empty rectangle, which Excel cannot show", () => {
    expect(() => call([])).toThrow(expect.objectContaining({ code: "#N/A" }));
    expect(() => call([[]])).toThrow(expect.objectContaining({ code: "#N/A" }));
  });

  it("shows errors that functions may not return as #VALUE!, naming them", () => {
    expect(() => call([[{ code: "#SPILL!" }]])).toThrow(
      expect.objectContaining({ code: "#VALUE!", message: "One of its cells shows #SPILL!: mend that cell first." }),
    );
  });
});

describe("registration", () => {
  it("is remembered, function by function, as far as Excel took them", () => {
    const [first, second, third] = allFunctions;
    if (!first || !second || !third) throw new Error("no functions");
    const associate = (id: string) => {
      if (id === third.name) throw new Error("refused");
    };
    expect(registeredFunctions()).toEqual([]);
    expect(() => register([first, second, third], { ...runtime, associate })).toThrow("refused");
    expect(registeredFunctions()).toEqual([first.name, second.name]);
  });
});
