import { build } from "./build.mjs";
import { findOrInstallChromium } from "./chromium.mjs";
import { distIsFresh } from "./freshness.mjs";
import { ensureInstalled, run } from "./install.mjs";

/** `npm test`: installs what is missing, builds what is old and runs every test; extra words go to jest. */
ensureInstalled();
const chromium = findOrInstallChromium();
if (!distIsFresh()) build();
run("npx", ["jest", "--config", "test/jest.config.js", ...process.argv.slice(2)], { CHROMIUM: chromium });
