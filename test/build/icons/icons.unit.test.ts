import { mkdtempSync, readFileSync, readdirSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { inflateSync } from "node:zlib";
import { markShapes, sand, umber } from "../../../src/build/icons/mark";
import { paint } from "../../../src/build/icons/paint";
import { iconPng, iconSizes, signNames, writeIcons } from "../../../src/build/icons/write-icons";

/** Reads a PNG the way a viewer does: width and height from its head, pixels from its data. */
function readPng(file: Buffer) {
  expect(file.subarray(0, 8).toString("hex")).toBe("89504e470d0a1a0a");
  expect(file.subarray(12, 16).toString()).toBe("IHDR");
  const [width, height] = [file.readUInt32BE(16), file.readUInt32BE(20)];
  const start = file.indexOf("IDAT");
  const rows = inflateSync(file.subarray(start + 4, start + 4 + file.readUInt32BE(start - 4)));
  const pixel = (x: number, y: number) => [...rows.subarray(y * (width * 4 + 1) + 1 + x * 4).subarray(0, 4)];
  return { width, height, pixel };
}

const bytes = (color: string) => [1, 3, 5].map((at) => parseInt(color.slice(at, at + 2), 16));

/** Contrast of two colours after WCAG 2: 1 for none, 21 for black on white. */
function contrast(one: string, other: string): number {
  const luminance = (color: string) => {
    const [red = 0, green = 0, blue = 0] = bytes(color).map((byte) => {
      const share = byte / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

describe("the icons", () => {
  it("are written in every size the manifest and pages use, with the drawing beside them", () => {
    const folder = path.join(mkdtempSync(path.join(os.tmpdir(), "loamsheet-icons-")), "assets");
    writeIcons(folder);
    const wanted = [16, 20, 24, 32, 40, 48, 64, 80].flatMap((size) =>
      ["icon", "check", "find"].map((name) => `${name}-${size}.png`),
    );
    expect(readdirSync(folder).sort()).toEqual([...wanted, "favicon.svg"].sort());
    for (const name of wanted) {
      const { width, height } = readPng(readFileSync(path.join(folder, name)));
      const [kind] = name.split("-");
      expect([`${kind}-${width}.png`, `${kind}-${height}.png`]).toEqual([name, name]);
    }
  });

  it.each(iconSizes)("show frame, layer, layer, layer, frame from the top down at %i pixels", (size) => {
    const { pixel } = readPng(iconPng(size));
    const middle = Math.floor(size / 2);
    const seen = Array.from({ length: size }, (_, y) => pixel(middle, y)).map((tone) => {
      const [red = 0] = tone;
      return red === bytes(umber)[0] ? "dark" : red === bytes(sand)[0] ? "light" : "between";
    });
    const bands = seen.filter((tone) => tone !== "between").filter((tone, index, all) => tone !== all[index - 1]);
    expect(bands).toEqual(["dark", "light", "dark", "light", "dark"]);
  });

  it.each(iconSizes)("carry their signs in the lower right corner alone, at %i pixels", (size) => {
    const mark = readPng(iconPng(size));
    for (const sign of signNames) {
      const signed = readPng(iconPng(size, sign));
      let [changed, outside] = [0, 0];
      for (let y = 0; y < size; y++) {
        for (let x = 0; x < size; x++) {
          if (String(mark.pixel(x, y)) === String(signed.pixel(x, y))) continue;
          changed += 1;
          if (x + 1 < 0.375 * size || y + 1 < 0.375 * size) outside += 1;
        }
      }
      expect([sign, changed > size, outside]).toEqual([sign, true, 0]);
    }
    expect(iconPng(size, "check").equals(iconPng(size, "find"))).toBe(false);
  });

  it("are opaque, so that no background shows through", () => {
    const { pixels } = paint(markShapes(1 / 16), 16);
    expect(pixels.filter((_, index) => index % 4 === 3).every((opacity) => opacity === 255)).toBe(true);
  });

  it("have two tones that stand out from each other, one from white and one from a dark ribbon", () => {
    expect(contrast(umber, sand)).toBeGreaterThan(4.5);
    expect(contrast(umber, "#ffffff")).toBeGreaterThan(3);
    expect(contrast(sand, "#292929")).toBeGreaterThan(3);
  });
});
