import { px } from "../../../hosts/chart/svg-text";
import type { LayoutStrip } from "../../../core/trials/trial-layout";
import { box, broad, inks, letters, lineAt, pictureFigure } from "./figure";

interface StripMap {
  readonly title: string;
  readonly alt: string;
  readonly key: string;
  readonly strips: readonly LayoutStrip[];
  /** The letter of a treatment and its place among them. */
  readonly signOf: (treatment: string) => { readonly letter: string; readonly index: number };
  readonly blockWord: string;
}

const rowHeight = 118;
/** More strips than this in one row become too narrow to read. */
const mostInRow = 16;

/** The strips as they lie beside each other, block by block; long trials go on in a row below. */
export function stripMap({ title, alt, key, strips, signOf, blockWord }: StripMap): HTMLElement {
  const rows = rowsOf(strips);
  const widest = Math.max(...rows.map((row) => row.length));
  const width = Math.min(36, (broad - 8) / widest);
  const body = rows.map((row, index) => rowOf(row, index * rowHeight, width)).join("");
  return pictureFigure({ id: "strip-map", title, alt, height: rows.length * rowHeight, body: patterns() + body, key });

  function rowOf(row: readonly LayoutStrip[], top: number, stripWidth: number): string {
    return row
      .map((strip, place) => {
        const x = 4 + place * stripWidth;
        const { letter, index } = signOf(strip.treatment);
        const begins = strip.block !== row[place - 1]?.block;
        return (
          (begins
            ? blockMark(`${blockWord} ${strip.block}`, x, top, widthOfBlock(row, strip.block) * stripWidth)
            : "") +
          box(x, top + 20, stripWidth, 60, `url(#strip-map-${index % looks.length})`) +
          sign(letter, x + stripWidth / 2, top + 50) +
          letters(String(strip.strip), x + stripWidth / 2, top + 94, "middle", inks.quiet) +
          (begins && place > 0 ? lineAt(x, top + 18, x, top + 98, { width: 3 }) : "")
        );
      })
      .join("");
  }
}

function widthOfBlock(row: readonly LayoutStrip[], block: number): number {
  return row.filter((strip) => strip.block === block).length;
}

/** The name of a block where it has room, its number alone where not. */
function blockMark(name: string, x: number, top: number, room: number): string {
  const fits = name.length * 6.2 < room - 4;
  return letters(fits ? name : (name.split(" ").at(-1) ?? ""), x + 2, top + 14, "start", inks.quiet);
}

/** The letter on a clear ground, so that it can be read on every pattern. */
function sign(letter: string, x: number, y: number): string {
  const half = 3 + letter.length * 4;
  return (
    `<rect x="${px(x - half)}" y="${px(y - 8)}" width="${px(2 * half)}" height="16" rx="3" fill="var(--raised)"/>` +
    letters(letter, x, y + 4, "middle")
  );
}

/** Whole blocks in a row, as many as can be read. */
function rowsOf(strips: readonly LayoutStrip[]): LayoutStrip[][] {
  const rows: LayoutStrip[][] = [];
  const blocks = [...new Set(strips.map(({ block }) => block))].map((block) =>
    strips.filter((strip) => strip.block === block),
  );
  for (const block of blocks) {
    const row = rows.at(-1);
    if (row && row.length + block.length <= mostInRow) row.push(...block);
    else rows.push([...block]);
  }
  return rows;
}

/** Grounds that stay apart without colour. */
const looks: readonly string[] = [
  "",
  `<path d="M-1 1L1 -1M0 6L6 0M5 7L7 5" stroke="${inks.solid}" stroke-width="1.5"/>`,
  `<circle cx="3" cy="3" r="1.3" fill="${inks.solid}"/>`,
  `<path d="M0 3H6" stroke="${inks.solid}" stroke-width="1.5"/>`,
  `<path d="M0 3H6M3 0V6" stroke="${inks.solid}" stroke-width="1"/>`,
  `<path d="M3 0V6" stroke="${inks.solid}" stroke-width="2"/>`,
];

function patterns(): string {
  const all = looks.map(
    (marks, index) =>
      `<pattern id="strip-map-${index}" width="6" height="6" patternUnits="userSpaceOnUse">` +
      `<rect width="6" height="6" fill="var(--raised)"/>${marks}</pattern>`,
  );
  return `<defs>${all.join("")}</defs>`;
}
