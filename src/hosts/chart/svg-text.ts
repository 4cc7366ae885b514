/** Escapes text for SVG and HTML. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** Pixels a text takes, near enough for laying out. */
export function textWidth(text: string, size: number): number {
  return text.length * size * 0.56;
}

/** The text, cut with an ellipsis where it is longer than the room. */
export function fitted(text: string, room: number, size: number): string {
  if (textWidth(text, size) <= room) return text;
  const letters = Math.max(1, Math.floor(room / (size * 0.56)) - 1);
  return `${text.slice(0, letters).trimEnd()}…`;
}

/** Coordinates with one decimal. */
export function px(value: number): string {
  return String(Math.round(value * 10) / 10);
}

interface TextLook {
  readonly size: number;
  readonly anchor?: "start" | "middle" | "end";
  readonly bold?: boolean;
  readonly color?: string;
  readonly turn?: number;
}

const ink = "#22282e";
export const quietInk = "#5b646c";

export function svgText(text: string, x: number, y: number, look: TextLook): string {
  const { size, anchor = "start", bold = false, color = ink, turn } = look;
  const turned = turn === undefined ? "" : ` transform="rotate(${turn} ${px(x)} ${px(y)})"`;
  const weight = bold ? ` font-weight="600"` : "";
  return `<text x="${px(x)}" y="${px(y)}" font-size="${size}" text-anchor="${anchor}" fill="${color}"${weight}${turned}>${escaped(text)}</text>`;
}
