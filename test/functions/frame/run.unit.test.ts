import { mostRows, runFunction } from "../../../src/functions/frame/run";
import type { CellIn } from "../../../src/functions/frame/cell";
import { bad, boxes, growth, mean } from "./sample-functions";

const only = (cells: ReturnType<typeof runFunction>) => {
  expect(cells).toHaveLength(1);
  expect(cells[0]).toHaveLength(1);
  return cells[0]?.[0];
};

describe("one value in, one value out", () => {
  it("computes from plain cells", () => {
    expect(only(runFunction(boxes, ["apple", 3]))).toBe(30);
  });
  it("takes an omitted optional argument as its default, whether missing, null or empty text", () => {
    for (const blank of [undefined, null, ""]) expect(only(runFunction(boxes, ["pear", 2, blank]))).toBe(16);
  });
  it("takes a 1 × 1 range for a cell", () => {
    expect(only(runFunction(boxes, [[["apple"]], [[3]], [[10]]]))).toBe(27);
  });
  it("reads numbers typed as text, with $, commas, spaces and percent signs", () => {
    expect(only(runFunction(growth, [" $1,000 ", "8%"]))).toBeCloseTo(1080, 9);
    expect(only(runFunction(boxes, ["apple", "4 ", "50 %"]))).toBe(20);
  });
  it("forgives case, plural, spaces and synonyms in words", () => {
    for (const word of ["Apple", " APPLES ", "pippins", "ap-ple"]) expect(only(runFunction(boxes, [word, 1]))).toBe(10);
  });
});

describe("what does not fit", () => {
  const message = (cell: unknown) => (cell as { message?: string }).message;

  it("waits quietly for a blank required cell", () => {
    expect(only(runFunction(boxes, ["apple", null]))).toEqual({ code: "#N/A", message: "waiting for count" });
  });
  it("takes a 0 where a word belongs as a blank cell of an older spreadsheet", () => {
    expect(only(runFunction(boxes, [0, 3]))).toEqual({ code: "#N/A", message: "waiting for kind" });
  });
  it("names argument, range, unit and the likely meaning", () => {
    const cell = only(runFunction(boxes, ["apple", 650]));
    expect(cell).toEqual({
      code: "#VALUE!",
      message: "count must be between 0 and 100 boxes; got 650. Did you mean 65?",
    });
  });
  it("asks about a percentage typed as a share", () => {
    const cell = only(runFunction(boxes, ["apple", 1, 0.155]));
    expect(message(cell)).toBe("spoiled is in percent: enter 15.5, not 0.155.");
  });
  it("asks about a rate typed in percent points", () => {
    expect(message(only(runFunction(growth, [100, 8])))).toBe("interest is a rate: enter 8 % as 8% or 0.08.");
  });
  it("lists the accepted words when there are few", () => {
    expect(message(only(runFunction(boxes, ["plum", 1])))).toBe('kind "plum" is not known here. Use: apple, pear.');
  });
  it("names text where a number belongs", () => {
    expect(message(only(runFunction(boxes, ["apple", "many"])))).toBe('count must be a number (boxes); got "many".');
  });
  it("passes a spreadsheet error on unchanged, before anything else", () => {
    expect(only(runFunction(boxes, [null, 900, { code: "#DIV/0!" }]))).toEqual({ code: "#DIV/0!" });
  });
  it("prefers a refused value to a blank", () => {
    expect(message(only(runFunction(boxes, [null, 900])))).toContain("count must be");
  });
  it("keeps NaN and infinities inside", () => {
    expect(only(runFunction(boxes, ["apple", Number.NaN]))).toMatchObject({ code: "#NUM!" });
    expect(runFunction(bad, [0])[0]?.[0]).toMatchObject({ code: "#NUM!" });
  });
  it("turns a refusal of the formula into its sentence", () => {
    expect(only(runFunction(bad, [13]))).toEqual({ code: "#NUM!", message: "13 is refused here." });
  });
});

describe("ranges", () => {
  it("fills a column from a column and single cells", () => {
    expect(runFunction(boxes, ["apple", [[1], [2], [3]]])).toEqual([[10], [20], [30]]);
  });
  it("crosses a column with a row", () => {
    expect(runFunction(boxes, [[["apple", "pear"]], [[1], [2]]])).toEqual([
      [10, 8],
      [20, 16],
    ]);
  });
  it("gives one error cell for one bad row and computes the others", () => {
    const cells = runFunction(boxes, ["apple", [[1], [null], [{ code: "#REF!" }], [101], [2]]]);
    expect(cells.map((row) => row[0])).toEqual([
      10,
      { code: "#N/A", message: "waiting for count" },
      { code: "#REF!" },
      expect.objectContaining({ code: "#VALUE!" }),
      20,
    ]);
  });
  it("names both arguments and sizes when ranges differ", () => {
    expect(
      only(
        runFunction(boxes, [
          [["apple"], ["pear"]],
          [[1], [2], [3]],
        ]),
      ),
    ).toEqual({
      code: "#VALUE!",
      message: "count (3 × 1) and kind (2 × 1) differ in size: give ranges of the same size, or one cell.",
    });
  });
  it("repeats a problem of a single cell in every answer", () => {
    const cells = runFunction(boxes, ["plum", [[1], [2]]]);
    expect(cells.map((row) => (row[0] as { code: string }).code)).toEqual(["#VALUE!", "#VALUE!"]);
  });
  it("answers a whole-column reference with advice", () => {
    const column: CellIn[][] = new Array<CellIn[]>(mostRows + 1).fill([1]);
    const cell = only(runFunction(boxes, ["apple", column])) as { message?: string };
    expect(cell.message).toContain("Point to the filled rows");
  });
  it("takes only one cell where a function gives a table", () => {
    expect(only(runFunction(bad, [[[1], [2]]]))).toMatchObject({ message: "by takes one cell; got a range of 2 × 1." });
  });
});

describe("lists", () => {
  it("passes over blanks", () => {
    expect(only(runFunction(mean, [[[2], [null], [""], [4]]]))).toBe(3);
  });
  it("waits for an empty list and asks for more when too short", () => {
    expect(only(runFunction(mean, [[[null], [""]]]))).toMatchObject({ code: "#N/A" });
    expect(only(runFunction(mean, [[[2]]]))).toMatchObject({ message: "counts needs at least 2 values; got 1." });
  });
  it("passes an error inside on unchanged", () => {
    expect(only(runFunction(mean, [[[2], [{ code: "#N/A" }], [3]]]))).toEqual({ code: "#N/A" });
  });
});
