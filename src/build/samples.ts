import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { starters } from "../workbook/starters";
import { addInOfManifest } from "./samples/add-in-of-manifest";
import { makeSample, type Sample } from "./samples/make-sample";
import { findOffice, Office } from "./samples/office";
import { paintSample } from "./samples/pictures";
import { waitingCells } from "./samples/problems";
import { samplesReadme } from "./samples/readme";

/**
 * Writes sample-workbooks/: the starters with the demo farm, calculated, and the page about them. Stops with the
 * cells named when one shows an error it was not meant to show. With --pictures it also paints their main pages.
 */
const project = path.resolve(__dirname, "../..");
const folder = path.join(project, "sample-workbooks");

async function main(): Promise<void> {
  const addIn = addInOfManifest(readFileSync(path.join(project, "manifest.xml"), "utf8"));
  mkdirSync(folder, { recursive: true });
  const samples: Sample[] = [];
  for (const starter of starters) samples.push(await makeSample(starter, addIn));
  for (const { starter, plan, values, bytes } of samples) {
    writeFileSync(path.join(folder, `${starter.key}.xlsx`), bytes);
    const waiting = waitingCells(plan, values);
    const note = waiting.length > 0 ? `; ${waiting.length} cells wait for an input, the first: ${waiting[0]}` : "";
    console.log(`${starter.key}.xlsx ${Math.round(bytes.length / 1024)} KB${note}`);
  }
  writeFileSync(path.join(folder, "README.md"), samplesReadme(starters));
  if (process.argv.includes("--pictures")) paint(samples);
}

function paint(samples: readonly Sample[]): void {
  const program = findOffice();
  if (!program) throw new Error("The pictures need LibreOffice. Install it, or set SOFFICE to its path.");
  const office = new Office(program);
  try {
    for (const sample of samples) paintSample(sample, path.join(folder, `${sample.starter.key}.png`), office);
  } finally {
    office.close();
  }
}

main().then(
  // The formula engine keeps timers that would hold the program open.
  () => process.exit(0),
  (problem: unknown) => {
    console.error(problem instanceof Error ? problem.message : problem);
    process.exit(1);
  },
);
