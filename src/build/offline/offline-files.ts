import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** The add-in's own files, which the browser page never asks for; and what lists or keeps the others. */
const notKept = /^(taskpane|functions\.js$|functions\.json|manifest\.xml|office\/|offline\.json|service-worker)/;

/**
 * The files that the browser page keeps for working without a network.
 *
 * @returns addresses relative to the page, and a mark that changes when any of them does
 */
export function offlineFiles(dist: string): { files: string[]; mark: string } {
  const names = readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(dist, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, "/"))
    .filter((name) => !notKept.test(name))
    .sort();
  const hash = createHash("sha256");
  for (const name of names) hash.update(name).update(readFileSync(path.join(dist, name)));
  return { files: ["./", ...names], mark: hash.digest("hex").slice(0, 16) };
}
