import { build } from "./build.mjs";
import { distIsFresh } from "./freshness.mjs";
import { ensureInstalled } from "./install.mjs";
import { serveDist } from "./serve.mjs";

/** `npm start`: installs what is missing, builds what is old, serves the browser workbook, opens it. */
ensureInstalled();
if (!distIsFresh()) {
  console.log("Building Loamsheet …");
  build();
}
const { address } = await serveDist(3210);
console.log(`\nYour farm workbook is at ${address}\nStop with Ctrl+C.`);
await openBrowser(address);

/** Opens the person's browser where there is one; a machine without a screen is fine. */
async function openBrowser(address) {
  const hasScreen = process.platform !== "linux" || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  if (!hasScreen || process.env.CI) return;
  const { default: open } = await import("open");
  await open(address).catch(() => console.log("No browser could be opened here: open the address yourself."));
}
