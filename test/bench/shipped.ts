import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { buildSync } from "esbuild";
import type { Figure } from "./figure";

/**
 * Runs a program of figures in a process of its own, bundled as the add-in is. The loader that runs TypeScript
 * from its sources wraps every function to keep its name, which costs more than a short formula does.
 *
 * @param program a file beside this one that prints its figures as JSON
 */
export function figuresOf(program: string): Figure[] {
  const folder = mkdtempSync(path.join(tmpdir(), "loamsheet-bench-"));
  try {
    const outfile = path.join(folder, "bundle.js");
    buildSync({ entryPoints: [path.join(__dirname, program)], outfile, bundle: true, platform: "node" });
    return JSON.parse(execFileSync(process.execPath, [outfile], { encoding: "utf8" })) as Figure[];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
