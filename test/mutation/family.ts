import { readdirSync } from "node:fs";
import path from "node:path";
import fc from "fast-check";
import type { WorksheetFunction } from "../../src/functions/frame";
import { exampleTests } from "../functions/example-tests";
import { guardTests } from "../functions/guard-tests";

/**
 * The tests that judge one family of src/core: its own, those of the worksheet functions it is asked through, and
 * those that every function has. Only these are loaded, since they are loaded anew for every mutant.
 */
const family = process.env["MUTATE_FAMILY"] ?? "";

/** Where the functions of a family bear another name than the family. */
const functionNames: Record<string, readonly string[]> = {
  machinery: ["cover"],
  money: ["money", "budget", "rent"],
  shared: ["frame", "units"],
  soil: ["soil", "soil-readings", "nitrogen"],
  statistics: ["trials"],
};
const askedThrough = functionNames[family] ?? [family];
const test = path.resolve(__dirname, "..");
const functions = path.resolve(__dirname, "../../src/functions");

function testsIn(folder: string, names: readonly string[]): string[] {
  return readdirSync(path.join(test, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts") && names.some((name) => file.startsWith(name)))
    .map((file) => path.join(test, folder, file));
}

function isFunction(value: object): value is WorksheetFunction {
  return "example" in value;
}

// What fails is not made smaller: one failure is enough, and the rest are skipped (stop-at-failure.js).
fc.configureGlobal({ endOnFailure: true });
const besideFamilies = readdirSync(path.join(test, "core")).filter((file) => file.endsWith(".test.ts"));
const inCore = family === "shared" ? [...besideFamilies, "units"] : [family];
const files = [...testsIn("core", inCore), ...testsIn("functions", askedThrough)];
// The quickest first.
for (const kind of ["unit", "golden", "property"])
  for (const file of files.filter((name) => name.includes(`.${kind}.`))) jest.requireActual(file);
for (const name of askedThrough) {
  const lists = Object.values<unknown>(jest.requireActual(path.join(functions, name))).filter(Array.isArray);
  for (const fn of lists.flat().filter(isFunction)) {
    describe(fn.name, () => {
      exampleTests(fn);
      guardTests(fn);
    });
  }
}
