import { execFileSync, spawnSync } from "node:child_process";
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { CalculatedWorkbook } from "../../hosts/calculated-workbook";
import type { SheetPlan } from "../../workbook/plan";
import { findOrInstallChromium } from "../chromium.mjs";
import type { Sample } from "./make-sample";
import type { Office } from "./office";

/** Sheets shown in the picture of a starter; its first ones where nothing is said. */
const mainSheets: Readonly<Record<string, readonly string[]>> = {
  "farm-plan": ["Summary", "Potash ledger", "What if"],
  "client-budget": ["Client report", "Proposed changes", "Now and then"],
};
const mostPages = 3;

const dotsPerInch = 110;
const widthPx = 560;
/** Upright pages are shown nearly whole, and stand beside two wide ones, of which the upper part is shown. */
const heightPx = { landscape: 350, portrait: 716 } as const;
const gapPx = 16;

interface Page {
  readonly file: string;
  readonly orientation: keyof typeof heightPx;
}

/** Paints the main pages of a sample into one picture, as a spreadsheet program prints them. */
export function paintSample(sample: Sample, target: string, office: Office): void {
  const file = path.join(office.folder, `${sample.starter.key}.xlsx`);
  writeFileSync(file, sample.bytes);
  const printed = office.pages(file, dotsPerInch);
  const pages = mainPages(sample, printed, office.texts(file.replace(/\.xlsx$/, ".pdf")));
  const album = path.join(office.folder, `${sample.starter.key}.html`);
  const picture = path.join(office.folder, `${sample.starter.key}.png`);
  writeFileSync(album, albumOf(pages));
  photograph(album, picture, pages);
  copyFileSync(picture, target);
  makeSmall(target);
}

/** The first page of each main sheet, found by the sheet's title, upright ones first. */
function mainPages({ plan, values }: Sample, files: readonly string[], texts: readonly string[]): Page[] {
  const wanted = mainSheets[plan.starter] ?? plan.sheets.slice(0, mostPages).map(({ name }) => name);
  const pages = wanted.map((name): Page => {
    const sheet = plan.sheets.find((one) => one.name === name);
    const file = sheet && files[texts.findIndex((text) => text.trimStart().startsWith(titleOf(sheet, values)))];
    if (!sheet || !file) throw new Error(`${plan.title} has no printed page of "${name}" to paint.`);
    return { file, orientation: sheet.print.orientation };
  });
  return pages.sort((a, b) => heightPx[b.orientation] - heightPx[a.orientation]);
}

/** What the title of a sheet shows, which a formula may make. */
function titleOf(sheet: SheetPlan, values: CalculatedWorkbook): string {
  const title = sheet.cells.find(({ style }) => style === "title");
  const shown = title && values.valueAt(sheet.name, title.row, title.column);
  return typeof shown === "string" ? shown : String(title?.content ?? sheet.name);
}

function albumOf(pages: readonly Page[]): string {
  const images = pages.map(
    ({ file, orientation }) =>
      `<img class="${orientation}" src="data:image/png;base64,${readFileSync(file).toString("base64")}">`,
  );
  return `<!doctype html><meta charset="utf-8"><style>
    body { margin: ${gapPx}px; background: #e7e2d8; display: grid; gap: ${gapPx}px; grid-template-columns: repeat(2, ${widthPx}px); }
    img { width: ${widthPx}px; height: ${heightPx.landscape}px; object-fit: cover; object-position: top; background: #fff; }
    img.portrait { height: ${heightPx.portrait}px; grid-row: span 2; }
  </style>${images.join("")}`;
}

function photograph(album: string, picture: string, pages: readonly Page[]): void {
  const columns = Math.min(2, pages.length);
  const width = columns * widthPx + (columns + 1) * gapPx;
  const tallest = Math.max(...pages.map(({ orientation }) => heightPx[orientation]));
  const height = (pages.length > 1 ? heightPx.portrait : tallest) + 2 * gapPx;
  const options = ["--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars"];
  const page = [`--window-size=${width},${height}`, `--screenshot=${picture}`, pathToFileURL(album).href];
  execFileSync(findOrInstallChromium(), [...options, ...page], { stdio: "ignore" });
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
