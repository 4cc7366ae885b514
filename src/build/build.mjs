import { ensureInstalled, run } from "./install.mjs";

/**
 * Builds everything into dist: bundles, pages, function metadata, help, icons and the manifest.
 * `--development` is quicker and larger; tests and `npm start` use it.
 */
export function build({ development = false } = {}) {
  ensureInstalled();
  run("npx", ["webpack", "--mode", development ? "development" : "production"]);
  run("npx", ["tsx", "src/build/artifacts.ts"]);
}

if (process.argv[1]?.endsWith("build.mjs")) build({ development: process.argv.includes("--development") });
