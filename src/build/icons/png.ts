import { crc32, deflateSync } from "node:zlib";
import type { Picture } from "./paint";

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const bytesPerPixel = 4;

/** A picture as a PNG file: 8 bits a channel with opacity, no filter. */
export function encodePng({ size, pixels }: Picture): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  return Buffer.concat([
    signature,
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(rows(pixels, size))),
    chunk("IEND"),
  ]);
}

/** Each row starts with the number of its filter; 0 is none. */
function rows(pixels: Uint8Array, size: number): Buffer {
  const length = size * bytesPerPixel;
  const out = Buffer.alloc(size * (length + 1));
  for (let row = 0; row < size; row++)
    out.set(pixels.subarray(row * length, (row + 1) * length), row * (length + 1) + 1);
  return out;
}

function chunk(type: string, content: Buffer = Buffer.alloc(0)): Buffer {
  const named = Buffer.concat([Buffer.from(type, "latin1"), content]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(content.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}
