import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { calculateSample } from "../../../src/build/samples/make-sample";
import { findOffice, Office } from "../../../src/build/samples/office";
import { writeXlsx } from "../../../src/hosts/xlsx/write-xlsx";
import { starters } from "../../../src/workbook/starters";

/**
 * Prints every page of every sample with LibreOffice, to be looked at. Run by hand:
 * npx tsx test/hosts/xlsx/office.ts FOLDER [starter]
 *
 * LibreOffice has no add-in to ask and shows the values kept in the file. Stops when a page says #NAME? all the same.
 */
const dotsPerInch = 80;

async function main(folder: string, only: string | undefined): Promise<void> {
  const program = findOffice();
  if (!program) throw new Error("LibreOffice is not installed.");
  mkdirSync(folder, { recursive: true });
  const office = new Office(program);
  try {
    for (const starter of starters.filter(({ key }) => only === undefined || key === only)) {
      const { plan, values } = await calculateSample(starter);
      const file = path.join(office.folder, `${starter.key}.xlsx`);
      writeFileSync(file, await writeXlsx(plan, values));
      const pages = office.pages(file, dotsPerInch);
      pages.forEach((page) => copyFileSync(page, path.join(folder, path.basename(page))));
      const nameless = office
        .texts(file.replace(/\.xlsx$/, ".pdf"))
        .flatMap((text, page) => (text.includes("#NAME?") ? [page + 1] : []));
      if (nameless.length > 0) throw new Error(`${starter.title} says #NAME? on page ${nameless.join(", ")}.`);
      console.log(`${starter.title}: ${pages.length} pages`);
    }
  } finally {
    office.close();
  }
}

main(process.argv[2] ?? "pages", process.argv[3]).then(
  () => process.exit(0),
  (problem: unknown) => {
    console.error(problem);
    process.exit(1);
  },
);
