import { existsSync, readdirSync, statSync } from "node:fs";
import path from "node:path";
import { projectFolder } from "./install.mjs";

const inputs = ["src", "package-lock.json", "webpack.config.js", "tsconfig.json", "manifest.xml"];

/** Whether dist holds a finished build newer than everything it is made from. */
export function distIsFresh() {
  const built = path.join(projectFolder, "dist/functions.json");
  if (!existsSync(built)) return false;
  return Math.max(...inputs.map((input) => newest(path.join(projectFolder, input)))) <= statSync(built).mtimeMs;
}

function newest(place) {
  if (!existsSync(place)) return 0;
  const facts = statSync(place);
  if (!facts.isDirectory()) return facts.mtimeMs;
  return Math.max(facts.mtimeMs, ...readdirSync(place).map((name) => newest(path.join(place, name))));
}
