import { formula, joined, partsOf, prose } from "../../../src/workbook/formula/expression";
import {
  less,
  lookUp,
  lookUpNumber,
  lookUpWords,
  orBlank,
  quiet,
  shown,
  sumOfAmounts,
  times,
  whenNamed,
  whenNumbers,
} from "../../../src/workbook/formula/natives";
import { place, sheetName, type Reference } from "../../../src/workbook/formula/reference";
import { headersOf } from "../../../src/workbook/model/table";

const fields = headersOf("Fields", { field: "Field", acres: "Acres" });

/** Reads an expression with each reference as its key in angle brackets. */
function read({ parts }: { parts: readonly (string | Reference)[] }): string {
  return parts.map((part) => (typeof part === "string" ? part : `<${keyOf(part)}>`)).join("");
}

function keyOf(reference: Reference): string {
  if (reference.to === "column") return `${reference.table}.${reference.column}.${reference.rows}`;
  if (reference.to === "span") return `${reference.table}.${reference.first}-${reference.last}`;
  return "sheet" in reference ? reference.sheet : reference.key;
}

describe("formula", () => {
  it("puts text in quotes and doubles the quotes within it", () => {
    expect(read(formula`IF(A1=${'say "when"'},${1.5},${true})`)).toBe('IF(A1="say ""when""",1.5,TRUE)');
  });
  it("keeps references apart from text until they are resolved", () => {
    expect(formula`SUM(${fields.all("acres")})`.parts).toEqual([
      "SUM(",
      { to: "column", table: "Fields", column: "acres", rows: "all" },
      ")",
    ]);
  });
  it("nests expressions without adding anything", () => {
    expect(read(formula`2*(${formula`${place("a.b")}+1`})`)).toBe("2*(<a.b>+1)");
  });
});

describe("joined", () => {
  it("puts the separator between terms only", () => {
    expect(read(joined([1, "x", place("k")], ","))).toBe('1,"x",<k>');
    expect(read(joined([7], ","))).toBe("7");
  });
});

describe("prose", () => {
  it("holds sheet names as references", () => {
    expect(prose`Fill in ${sheetName("fields")} first.`.prose).toEqual([
      "Fill in ",
      { to: "sheetName", sheet: "fields" },
      " first.",
    ]);
  });
});

describe("the native helpers", () => {
  const name = fields.own("field");
  const acres = fields.own("acres");
  it("shows nothing in a row without a name", () => {
    expect(read(whenNamed(name, 1))).toBe('IF(<Fields.field.this>="","",1)');
  });
  it("waits quietly until every part is a number", () => {
    expect(read(whenNumbers([acres, place("x")], formula`${acres}*2`))).toBe(
      'IF(COUNT(<Fields.acres.this>,<x>)=2,<Fields.acres.this>*2,"")',
    );
  });
  it("hands a blank over as text, never as 0", () => {
    expect(read(orBlank(acres))).toBe('IF(<Fields.acres.this>&""="","",<Fields.acres.this>)');
  });
  it("looks up by exact match", () => {
    expect(read(lookUp(name, fields.all("field"), fields.all("acres")))).toBe(
      "INDEX(<Fields.acres.all>,MATCH(<Fields.field.this>,<Fields.field.all>,0))",
    );
  });
  it("looks up a number so that a blank does not become 0, and words so that they are always text", () => {
    const found = "INDEX(<Fields.acres.all>,MATCH(<Fields.field.this>,<Fields.field.all>,0))";
    expect(read(lookUpNumber(name, fields.all("field"), fields.all("acres")))).toBe(
      `IFERROR(IF(${found}&""="","",${found}),"")`,
    );
    expect(read(lookUpWords(name, fields.all("field"), fields.all("acres")))).toBe(`IFERROR(${found}&"","")`);
  });
  it("multiplies and subtracts once both are numbers", () => {
    expect(read(times(acres, 3))).toBe('IF(COUNT(<Fields.acres.this>,3)=2,<Fields.acres.this>*3,"")');
    expect(read(less(acres, 3))).toBe('IF(COUNT(<Fields.acres.this>,3)=2,<Fields.acres.this>-3,"")');
  });
  it("adds up amounts past cells that hold an error", () => {
    expect(read(sumOfAmounts(fields.all("acres")))).toBe('SUMIF(<Fields.acres.all>,">0")');
  });
  it("writes numbers into sentences by a format", () => {
    expect(read(shown(2, "0.0"))).toBe('TEXT(2,"0.0")');
    expect(read(quiet(3))).toBe('IFERROR(3,"")');
  });
  it("takes a bare term as its own parts", () => {
    expect(partsOf("a")).toEqual(['"a"']);
  });
});
