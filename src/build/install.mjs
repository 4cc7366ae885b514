import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

export const projectFolder = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");

/** Installs the packages of the lock file when they are missing or older than it. Needs Node alone. */
export function ensureInstalled() {
  const marker = path.join(projectFolder, "node_modules/.package-lock.json");
  const lock = path.join(projectFolder, "package-lock.json");
  if (existsSync(marker) && statSync(marker).mtimeMs >= statSync(lock).mtimeMs) return;
  console.log("Installing the packages this project needs (once) …");
  run("npm", ["ci", "--ignore-scripts", "--no-audit", "--no-fund"]);
}

/** Runs a program of the project and stops with its exit code when it fails. */
export function run(program, args, environment = {}) {
  const result = spawnSync(program, args, {
    cwd: projectFolder,
    stdio: "inherit",
    env: { ...process.env, ...environment },
    shell: process.platform === "win32",
  });
  if (result.status !== 0) process.exit(result.status ?? 1);
}
