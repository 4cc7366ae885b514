import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, rmSync } from "node:fs";

/**
 * Mutates src/core family by family and prints a table and the survivors.
 * Arguments: the sample ("0/6", the first of six equal parts, is the rule; "0/1" is all), then families (all, if none).
 */
const [sample = "0/6", ...asked] = process.argv.slice(2);
const inCore = readdirSync("src/core", { withFileTypes: true }).filter((entry) => entry.isDirectory());
const families = asked.length > 0 ? asked : [...inCore.map(({ name }) => name), "shared"];

const reports = families.flatMap((family) => mutate(family));
console.log("| family | mutants | killed | timed out | survived | not reached | score |");
console.log("| --- | --: | --: | --: | --: | --: | --: |");
for (const { family, mutants } of reports) console.log(tableRow(family, mutants));
console.log(
  tableRow(
    "**all**",
    reports.flatMap(({ mutants }) => mutants),
  ),
);
for (const { family, mutants } of reports) {
  console.log(`\n${family}`);
  for (const mutant of mutants) if (isAlive(mutant)) console.log(line(mutant));
}

function mutate(family) {
  const file = `.cache/mutation/${family}.json`;
  rmSync(file, { force: true });
  const env = { ...process.env, MUTATE_FAMILY: family, MUTATE_SAMPLE: sample };
  spawnSync("stryker", ["run", "test/mutation/stryker.config.mjs"], { env, stdio: ["ignore", 2, 2] });
  if (!existsSync(file)) throw new Error(`Stryker left no report of ${family}: its words stand above.`);
  return [{ family, mutants: mutantsOf(JSON.parse(readFileSync(file, "utf8"))) }];
}

/** The mutants that were run: neither outside the sample nor words for people, and not broken at loading. */
function mutantsOf({ files }) {
  return Object.entries(files).flatMap(([file, { mutants, source }]) =>
    mutants
      .filter(({ status }) => ["Killed", "Timeout", "Survived", "NoCoverage"].includes(status))
      .map((mutant) => ({ ...mutant, file, source: source.split("\n") })),
  );
}

function isAlive({ status }) {
  return status === "Survived" || status === "NoCoverage";
}

function tableRow(family, mutants) {
  const count = (status) => mutants.filter((mutant) => mutant.status === status).length;
  const score = (100 * mutants.filter((mutant) => !isAlive(mutant)).length) / mutants.length;
  const counts = [mutants.length, ...["Killed", "Timeout", "Survived", "NoCoverage"].map(count)];
  return `| ${[family, ...counts, `${score.toFixed(0)} %`].join(" | ")} |`;
}

function line({ file, source, location: { start, end }, mutatorName, replacement, status }) {
  const first = source[start.line - 1];
  const was =
    start.line === end.line ? first.slice(start.column - 1, end.column - 1) : `${first.slice(start.column - 1)} …`;
  const short = (text) => text.replace(/\s+/g, " ").slice(0, 100);
  return `${status} ${file}:${start.line} ${mutatorName}: ${short(was)} → ${short(replacement)}`;
}
