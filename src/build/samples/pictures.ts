import { execFileSync, spawnSync } from "node:child_process";
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { writeXlsx } from "../../hosts/xlsx/write-xlsx";
import type { SheetPlan } from "../../workbook/plan";
import { frozenPlan } from "./frozen-plan";
import type { Sample } from "./make-sample";
import { findOrInstallChromium } from "../chromium.mjs";
import type { Office } from "./office";

const dotsPerInch = 110;
const page = { widthPx: 560, heightPx: 433, gapPx: 16 } as const;
const columns = 2;

/** Sheets shown in the picture of a starter, four at most; its first four where nothing is said. */
const mainSheets: Readonly<Record<string, readonly string[]>> = {};

/** Paints the main pages of a sample side by side into one picture, as a spreadsheet program prints them. */
export async function paintSample(sample: Sample, target: string, office: Office): Promise<void> {
  const file = path.join(office.folder, `${sample.starter.key}.xlsx`);
  // A spreadsheet program without the add-in would print #NAME? where the sample shows a number.
  writeFileSync(file, await writeXlsx(frozenPlan(sample.plan, sample.values), sample.values));
  const pages = office.pages(file, dotsPerInch);
  const shown = pagesOf(sample, office, file).flatMap((index) => pages[index] ?? []);
  const album = path.join(office.folder, `${sample.starter.key}.html`);
  writeFileSync(album, albumOf(shown));
  const picture = path.join(office.folder, `${sample.starter.key}.png`);
  photograph(album, picture, shown.length);
  copyFileSync(picture, target);
  makeSmall(target);
}

/** Where the main sheets start, counted in pages from 0: a sheet's first page opens with its title. */
function pagesOf({ starter, plan }: Sample, office: Office, file: string): number[] {
  const wanted = mainSheets[starter.key] ?? plan.sheets.slice(0, 4).map(({ name }) => name);
  const texts = office.texts(file.replace(/\.xlsx$/, ".pdf"));
  return plan.sheets
    .filter(({ name }) => wanted.includes(name))
    .map((sheet) => texts.findIndex((text) => text.trimStart().startsWith(titleOf(sheet))))
    .filter((index) => index >= 0);
}

function titleOf(sheet: SheetPlan): string {
  return String(sheet.cells.find(({ style }) => style === "title")?.content ?? sheet.name);
}

function albumOf(pictures: readonly string[]): string {
  const images = pictures.map((file) => `<img src="data:image/png;base64,${readFileSync(file).toString("base64")}">`);
  return `<!doctype html><meta charset="utf-8"><style>
    body { margin: ${page.gapPx}px; background: #e7e2d8; display: grid; gap: ${page.gapPx}px; grid-template-columns: repeat(${columns}, ${page.widthPx}px); }
    img { width: ${page.widthPx}px; height: ${page.heightPx}px; object-fit: contain; object-position: top; background: #fff; }
  </style>${images.join("")}`;
}

function photograph(album: string, picture: string, count: number): void {
  const rows = Math.ceil(count / columns);
  const width = columns * page.widthPx + (columns + 1) * page.gapPx;
  const height = rows * page.heightPx + (rows + 1) * page.gapPx;
  const options = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--hide-scrollbars",
    `--window-size=${width},${height}`,
  ];
  execFileSync(findOrInstallChromium(), [...options, `--screenshot=${picture}`, pathToFileURL(album).href], {
    stdio: "ignore",
  });
}

/** Few colours are enough for printed pages, and make the picture a third as large; done where pngquant is there. */
function makeSmall(picture: string): void {
  const { error } = spawnSync("pngquant", [
    "--force",
    "--skip-if-larger",
    "--strip",
    "--output",
    picture,
    "64",
    picture,
  ]);
  if (error) console.log("pngquant is not installed: the picture stays as large as it is.");
}
