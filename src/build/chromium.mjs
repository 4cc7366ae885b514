import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const usualPlaces = {
  linux: [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
    "/usr/bin/google-chrome-stable",
    "/usr/bin/microsoft-edge",
    "/snap/bin/chromium",
  ],
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: [
    `${process.env.PROGRAMFILES}\\Google\\Chrome\\Application\\chrome.exe`,
    `${process.env["PROGRAMFILES(X86)"]}\\Google\\Chrome\\Application\\chrome.exe`,
    `${process.env["PROGRAMFILES(X86)"]}\\Microsoft\\Edge\\Application\\msedge.exe`,
    `${process.env.LOCALAPPDATA}\\Google\\Chrome\\Application\\chrome.exe`,
  ],
};

/**
 * The browser for the browser tests: CHROMIUM when set, else the Chrome, Edge or Chromium that is there, else
 * Debian's, installed now. Browser tests are never left out silently: where none can be had, this stops.
 */
export function findOrInstallChromium() {
  const found = find();
  if (found) return found;
  installOnDebian();
  const installed = find();
  if (installed) return installed;
  console.error(
    "The browser tests need Chrome, Edge or Chromium, and none was found. Install one, or set CHROMIUM to its path.",
  );
  process.exit(1);
}

function find() {
  const places = [process.env.CHROMIUM, ...(usualPlaces[process.platform] ?? [])];
  return places.find((place) => place && existsSync(place));
}

function installOnDebian() {
  if (!existsSync("/usr/bin/apt-get")) return;
  console.log("Installing Chromium for the browser tests …");
  const sudo = process.getuid?.() === 0 ? [] : ["sudo"];
  for (const words of [
    ["apt-get", "update"],
    ["apt-get", "install", "-y", "chromium"],
  ]) {
    const [program, ...args] = [...sudo, ...words];
    spawnSync(program, args, {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
  }
}
