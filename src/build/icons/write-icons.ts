import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { markShapes, markSvg } from "./mark";
import { paint } from "./paint";
import { encodePng } from "./png";
import { signs, signShapes, type Sign } from "./signs";

/** Widths in pixels: 16, 32 and 80 are asked for by the ribbon, the others serve scaled screens and lists. */
export const iconSizes = [16, 20, 24, 32, 40, 48, 64, 80] as const;

export const signNames = Object.keys(signs) as Sign[]; // its own keys

/** The mark at one size, with a sign where one is asked for. Its frame is a whole number of pixels, so that it stays sharp. */
export function iconPng(size: number, sign?: Sign): Buffer {
  const frame = Math.max(1, Math.round(size / 16)) / size;
  return encodePng(paint(sign === undefined ? markShapes(frame) : signShapes(sign, frame), size));
}

/** Writes icon-16.png … icon-80.png, the same with each sign, and favicon.svg into a folder, made when missing. */
export function writeIcons(folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const size of iconSizes) {
    writeFileSync(join(folder, `icon-${size}.png`), iconPng(size));
    for (const sign of signNames) writeFileSync(join(folder, `${sign}-${size}.png`), iconPng(size, sign));
  }
  writeFileSync(join(folder, "favicon.svg"), markSvg());
}
