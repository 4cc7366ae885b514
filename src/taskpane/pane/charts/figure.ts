import { escaped, px, svgText } from "../../../hosts/chart/svg-text";
import { linearScale, type LinearScale } from "../../../hosts/chart/scale";
import { axisNumber } from "../../../hosts/chart/axis-number";
import { element } from "../element";

/** Pictures of the pane are drawn this broad and grow with the room they have. */
export const broad = 300;
export const letterSize = 11;

/** Colours follow the theme of the pane and are plain black and white in print. */
export const inks = {
  text: "var(--text)",
  quiet: "var(--quiet)",
  rule: "var(--rule)",
  edge: "var(--edge)",
  good: "var(--good)",
  bad: "var(--bad)",
  solid: "var(--subsoil)",
} as const;

interface Picture {
  readonly id: string;
  readonly title: string;
  /** What the picture shows, for a reader who cannot see it. */
  readonly alt: string;
  readonly height: number;
  readonly body: string;
  /** Over the picture, where no heading stands there already. */
  readonly head?: string;
  /** Under the picture: what its signs mean. */
  readonly key?: string;
}

/** A drawing with its title and description, and a line under it that says how to read it. */
export function pictureFigure({ id, title, alt, height, body, head, key }: Picture): HTMLElement {
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${id}-title ${id}-alt" ` +
    `viewBox="0 0 ${broad} ${Math.ceil(height)}" width="100%">` +
    `<title id="${id}-title">${escaped(title)}</title><desc id="${id}-alt">${escaped(alt)}</desc>` +
    `${hatch(id)}${body}</svg>`;
  const figure = element("figure", { class: "picture", id });
  figure.innerHTML = svg;
  if (head !== undefined) figure.prepend(element("p", { class: "picture-head", "aria-hidden": "true" }, head));
  if (key !== undefined) figure.append(element("figcaption", { class: "hint" }, key));
  return figure;
}

/** Stripes that stay apart from a solid fill without colour. */
function hatch(id: string): string {
  return (
    `<defs><pattern id="${id}-hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">` +
    `<rect width="5" height="5" fill="var(--raised)"/><rect width="2" height="5" fill="${inks.solid}"/></pattern></defs>`
  );
}

export function hatched(id: string): string {
  return `url(#${id}-hatch)`;
}

interface LineLook {
  readonly color?: string;
  readonly width?: number;
  readonly dash?: string;
}

export function lineAt(x1: number, y1: number, x2: number, y2: number, look: LineLook = {}): string {
  const { color = inks.text, width = 1, dash } = look;
  const dashed = dash === undefined ? "" : ` stroke-dasharray="${dash}"`;
  return `<line x1="${px(x1)}" y1="${px(y1)}" x2="${px(x2)}" y2="${px(y2)}" stroke="${color}" stroke-width="${width}"${dashed}/>`;
}

export function box(x: number, y: number, width: number, height: number, fill: string): string {
  return `<rect x="${px(x)}" y="${px(y)}" width="${px(Math.max(width, 0))}" height="${px(height)}" fill="${fill}" stroke="${inks.text}" stroke-width="0.75"/>`;
}

export function letters(
  text: string,
  x: number,
  y: number,
  anchor: "start" | "middle" | "end" = "start",
  color: string = inks.text,
): string {
  return svgText(text, x, y, { size: letterSize, anchor, color });
}

/** Text that lines run behind: it keeps a ground of its own. */
export function overLines(text: string): string {
  return `<g paint-order="stroke" stroke="var(--surface)" stroke-width="4" stroke-linejoin="round">${text}</g>`;
}

/** Values along the bottom: faint lines with their numbers, the line of zero strong. */
export function bottomAxis(values: LinearScale, top: number, bottom: number, title: string): string {
  const write = axisNumber(undefined);
  const ticks = values.ticks.length > 6 ? values.ticks.filter((_, index) => index % 2 === 0) : values.ticks;
  const zero = values.low <= 0 && values.high >= 0;
  return [
    ...ticks.map((tick) => {
      const x = values.at(tick);
      return (
        lineAt(x, top, x, bottom, { color: inks.rule }) + letters(write(tick), x, bottom + 14, "middle", inks.quiet)
      );
    }),
    zero ? lineAt(values.at(0), top, values.at(0), bottom, { width: 2 }) : "",
    letters(title, broad / 2, bottom + 29, "middle", inks.quiet),
  ].join("");
}

/** A scale across the picture that leaves room for the numbers at its ends, and at its left for names. */
export function acrossScale(values: readonly number[], left = 18): LinearScale {
  return linearScale(values, left, broad - 18, false);
}

/** With one decimal and a true minus sign; halves go away from zero, as they do in a cell. */
export function tenth(value: number): string {
  const size = (Math.round(Math.abs(value) * 10 + 1e-9) / 10).toFixed(1);
  return value < 0 && size !== "0.0" ? `−${size}` : size;
}
