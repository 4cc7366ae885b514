import { inflateSync } from "node:zlib";
import type { Page } from "playwright-core";

/** The colour of one pixel of a page as it is painted, "#rrggbb". */
export async function colorAt(page: Page, x: number, y: number): Promise<string> {
  const png = await page.screenshot({ clip: { x, y, width: 1, height: 1 } });
  // One pixel: a filter byte, which changes nothing without neighbours, then red, green and blue.
  const [, red = 0, green = 0, blue = 0] = inflateSync(imageData(png));
  return `#${[red, green, blue].map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}

function imageData(png: Buffer): Buffer {
  const parts: Buffer[] = [];
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    if (png.toString("latin1", at + 4, at + 8) === "IDAT") parts.push(png.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  return Buffer.concat(parts);
}
