import Ajv from "ajv";
import { allFunctions } from "../../src/functions";
import type { Argument } from "../../src/functions/frame";
import { metadataFor } from "../../src/functions/frame/metadata";
import { metadataSchema } from "./metadata-schema";
import { builtInFunctions, macroWords } from "./reserved-names";

const metadata = metadataFor(allFunctions, "https://example.org/loam");
const names = metadata.functions.map(({ name }) => name);

/** What a spreadsheet would take for a cell: up to three letters and a number in its reach, or row and column. */
function looksLikeACell(name: string): boolean {
  return /^[A-Z]{1,3}[1-9]\d{0,6}$/.test(name) || /^R\d*C\d*$/.test(name);
}

describe("the registration file", () => {
  it("has the form that Excel reads", () => {
    const check = new Ajv({ allErrors: true }).compile(metadataSchema);
    expect([check(JSON.parse(JSON.stringify(metadata))), check.errors]).toEqual([true, null]);
  });

  it("is small enough for desktop Excel, which refuses a file of 1 MB", () => {
    expect(Buffer.byteLength(JSON.stringify(metadata))).toBeLessThan(600 * 1024);
  });

  it("lets errors reach the functions, so that they are passed on as they are", () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    for (const { parameters } of metadata.functions) for (const { type } of parameters) expect(type).toBe("any");
  });

  it("names every function once", () => {
    const ids = metadata.functions.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
    expect(names.map((name) => name.toUpperCase())).toEqual([...new Set(ids)]);
  });

  it.each(names)("gives %s a name that a sheet can tell from everything else", (name) => {
    expect(name).toMatch(/^[A-Z][A-Z0-9]{2,}$/);
    expect([looksLikeACell(name), builtInFunctions.has(name), macroWords.has(name)]).toEqual([false, false, false]);
  });

  it("can tell a cell from a name", () => {
    expect(["LB100", "XFD1048576", "R1C1", "RC"].map(looksLikeACell)).toEqual([true, true, true, true]);
    expect(["SEEDCOST", "KSTATUS", "GDD50X"].map(looksLikeACell)).toEqual([false, false, false]);
  });

  it("names the parameters of a function differently, the ones that may be left out last", () => {
    for (const { name, parameters } of metadata.functions) {
      const own = parameters.map((parameter) => parameter.name.toLowerCase());
      expect([name, own]).toEqual([name, [...new Set(own)]]);
      const optional = parameters.map((parameter) => parameter.optional === true);
      expect([name, optional]).toEqual([name, [...optional].sort()]);
    }
  });

  it("offers the words of every list a person picks from, crops, nutrients and guides among them", () => {
    const enums = new Map(metadata.enums.map(({ id, values }) => [id, values]));
    expect(enums.size).toBe(metadata.enums.length);
    for (const id of ["CROP", "NUTRIENT", "GUIDE"]) expect(enums.get(id)?.length).toBeGreaterThan(0);
    for (const { parameters } of metadata.functions) {
      for (const { customEnumId } of parameters) if (customEnumId) expect([...enums.keys()]).toContain(customEnumId);
    }
    const lists = allFunctions
      .flatMap((fn) => Object.values<Argument>(fn.args))
      .flatMap(({ vocabulary }) => vocabulary ?? []);
    for (const { name, words, find } of lists) {
      const offered = enums.get(enumIdOf(name))?.map(({ stringValue }) => stringValue);
      expect([name, offered]).toEqual([name, Object.values(words).map(({ label }) => label)]);
      for (const word of offered ?? []) expect([word, find(word) !== undefined]).toEqual([word, true]);
    }
  });
});

function enumIdOf(vocabulary: string): string {
  return vocabulary.toUpperCase().replace(/[^A-Z]/g, "_");
}
