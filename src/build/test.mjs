import { build } from "./build.mjs";
import { findOrInstallChromium } from "./chromium.mjs";
import { distIsFresh } from "./freshness.mjs";
import { ensureInstalled, run } from "./install.mjs";

/**
 * `npm test`: installs what is missing, builds what is old and runs every test; extra words go to jest. Unit tests
 * alone need no build and no browser, so whoever works on a formula waits for neither.
 */
const words = process.argv.slice(2);
ensureInstalled();
run("npx", ["jest", "--config", "test/jest.config.js", ...words], unitTestsOnly() ? {} : forEveryTest());

function unitTestsOnly() {
  const flag = words.indexOf("--selectProjects");
  return flag >= 0 && words[flag + 1] === "unit" && (words[flag + 2] ?? "-").startsWith("-");
}

function forEveryTest() {
  const chromium = findOrInstallChromium();
  if (!distIsFresh()) build();
  return { CHROMIUM: chromium };
}
