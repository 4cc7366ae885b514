import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { markShapes, markSvg } from "./mark";
import { paint } from "./paint";
import { encodePng } from "./png";

/** Widths in pixels: 16, 32 and 80 are asked for by the ribbon, the others serve scaled screens and lists. */
export const iconSizes = [16, 20, 24, 32, 40, 48, 64, 80] as const;

/** The mark at one size. Its frame is a whole number of pixels, so that it stays sharp. */
export function iconPng(size: number): Buffer {
  const framePixels = Math.max(1, Math.round(size / 16));
  return encodePng(paint(markShapes(framePixels / size), size));
}

/** Writes icon-16.png … icon-80.png and favicon.svg into a folder, which is made when missing. */
export function writeIcons(folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const size of iconSizes) writeFileSync(join(folder, `icon-${size}.png`), iconPng(size));
  writeFileSync(join(folder, "favicon.svg"), markSvg());
}
