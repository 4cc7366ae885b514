import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { offlineFiles } from "../../src/build/offline/offline-files";

let dist: string;

beforeEach(() => {
  dist = mkdtempSync(path.join(tmpdir(), "loamsheet-dist-"));
  mkdirSync(path.join(dist, "help"));
  for (const name of ["index.html", "workbook.js", "help/functions.html", "functions.js", "taskpane.html"]) {
    writeFileSync(path.join(dist, name), name);
  }
});
afterEach(() => rmSync(dist, { recursive: true }));

it("lists what the browser page needs, and not the files of the add-in", () => {
  expect(offlineFiles(dist).files).toEqual(["./", "help/functions.html", "index.html", "workbook.js"]);
});

it("has another mark when one of the files changes, and the same when none does", () => {
  const { mark } = offlineFiles(dist);
  writeFileSync(path.join(dist, "functions.js"), "something else");
  expect(offlineFiles(dist).mark).toBe(mark);
  writeFileSync(path.join(dist, "workbook.js"), "something else");
  expect(offlineFiles(dist).mark).not.toBe(mark);
});
