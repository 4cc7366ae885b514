import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { allFunctions } from "../../src/functions";
import type { Figure } from "./figure";

const dist = process.env.LOAMSHEET_DIST ?? path.resolve(__dirname, "../../dist");

/** Sizes as sent, compressed. Meaningful for a production build (npm run build). */
export function sizes(): (Figure & { readonly limit: number })[] {
  return [
    // The first 31 functions were held to 60 KB and took 41; the others bring their own tables, words and sources.
    {
      what: `functions.js, ${allFunctions.length} functions`,
      value: kilobytes(["functions.js"]),
      unit: "KB gz",
      limit: 320,
    },
    {
      what: "task pane, script and styles",
      value: kilobytes(["taskpane.js", "taskpane.css"]),
      unit: "KB gz",
      limit: 120,
    },
    { what: "functions.json", value: kilobytes(["functions.json"]), unit: "KB gz", limit: 60 },
    {
      what: "browser page, script and styles",
      value: kilobytes(["workbook.js", "workbook.css"]),
      unit: "KB gz",
      limit: 2500,
    },
  ];
}

function kilobytes(names: readonly string[]): number {
  return names
    .map((name) => path.join(dist, name))
    .filter((file) => existsSync(file))
    .reduce((sum, file) => sum + gzipSync(readFileSync(file)).length / 1024, 0);
}
