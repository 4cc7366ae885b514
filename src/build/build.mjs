import { ensureInstalled, run } from "./install.mjs";

/** Builds everything into dist: bundles, pages, function metadata, help, icons and the manifest. */
export function build() {
  ensureInstalled();
  run("npx", ["webpack", "--mode", "production"]);
  run("npx", ["tsx", "src/build/artifacts.ts"]);
}

if (process.argv[1]?.endsWith("build.mjs")) build();
