import type { SeriesLook } from "../../workbook/plan";
import { px } from "./svg-text";

/** Point markers differ in shape as well as in colour. */
const shapes: readonly ((x: number, y: number) => string)[] = [
  (x, y) => `M${px(x - 4)} ${px(y)}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0z`,
  (x, y) => `M${px(x - 4)} ${px(y - 4)}h8v8h-8z`,
  (x, y) => `M${px(x)} ${px(y - 5)}l5 9h-10z`,
  (x, y) => `M${px(x)} ${px(y - 5)}l5 5l-5 5l-5 -5z`,
];

export function marker(index: number, x: number, y: number, color: string): string {
  const shape = shapes[index % shapes.length];
  return shape ? `<path d="${shape(x, y)}" fill="${color}" stroke="#ffffff"/>` : "";
}

export function rectangle(x: number, y: number, width: number, height: number, color: string): string {
  return `<rect x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height)}" fill="${color}"/>`;
}

export function straight(x1: number, y1: number, x2: number, y2: number, color: string): string {
  return `<line x1="${px(x1)}" y1="${px(y1)}" x2="${px(x2)}" y2="${px(y2)}" stroke="${color}"/>`;
}

const dashes = { solid: "", dashed: "7 4", dotted: "2 3", mixed: "8 3 2 3" } as const;
const inOrder = ["solid", "dashed", "dotted", "mixed"] as const;

/** How the line of a series is broken: as its look says, else each by its place in the chart. */
export function dashOf(look: SeriesLook | undefined, index: number): string {
  return dashes[look === undefined || look === "points" ? (inOrder[index % inOrder.length] ?? "solid") : look];
}

export function hasMarkers(look: SeriesLook | undefined): boolean {
  return look === undefined || look === "points";
}

/** A line through the points; it breaks where a value is missing. */
export function path(points: readonly ({ x: number; y: number } | undefined)[], dash: string, color: string): string {
  let pen = "M";
  const steps = points.map((point) => {
    const step = point ? `${pen}${px(point.x)} ${px(point.y)}` : "";
    pen = point ? "L" : "M";
    return step;
  });
  const dashed = dash ? ` stroke-dasharray="${dash}"` : "";
  return `<path d="${steps.join("")}" fill="none" stroke="${color}" stroke-width="2"${dashed}/>`;
}
