import type { Point, Shape } from "./mark";

/** Red, green, blue and opacity, a byte each, row by row from the top. */
export interface Picture {
  readonly size: number;
  readonly pixels: Uint8Array;
}

/** Samples a side of each pixel: edges that cut a pixel come out smooth. */
const samplesPerSide = 8;

/** Paints shapes of a unit square one over the other on a transparent square of the given size in pixels. */
export function paint(shapes: readonly Shape[], size: number): Picture {
  const pixels = new Uint8Array(size * size * 4);
  const topmostFirst = shapes.map(({ color, corners }) => ({ corners, tone: toneOf(color) })).reverse();
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      const sum = [0, 0, 0, 0];
      for (const at of samplesOf(column, row, size)) {
        const top = topmostFirst.find(({ corners }) => contains(corners, at));
        top?.tone.forEach((share, channel) => (sum[channel] = (sum[channel] ?? 0) + share));
      }
      pixels.set(blend(sum), (row * size + column) * 4);
    }
  }
  return { size, pixels };
}

/** The tones of the samples in one pixel, averaged; opacity is the share of samples that hit something. */
function blend([red = 0, green = 0, blue = 0, hits = 0]: readonly number[]): number[] {
  if (hits === 0) return [0, 0, 0, 0];
  const opacity = Math.round((hits / samplesPerSide ** 2) * 255);
  return [Math.round(red / hits), Math.round(green / hits), Math.round(blue / hits), opacity];
}

function* samplesOf(column: number, row: number, size: number): Generator<Point> {
  for (let down = 0; down < samplesPerSide; down++) {
    for (let across = 0; across < samplesPerSide; across++) {
      yield {
        x: (column + (across + 0.5) / samplesPerSide) / size,
        y: (row + (down + 0.5) / samplesPerSide) / size,
      };
    }
  }
}

/** "#rrggbb" as three bytes and a 1 that counts the sample. */
function toneOf(color: string): readonly number[] {
  return [1, 3, 5].map((start) => parseInt(color.slice(start, start + 2), 16)).concat(1);
}

/** Whether a point is inside a polygon: a ray to the right crosses its edges an odd number of times. */
function contains(corners: readonly Point[], at: Point): boolean {
  let inside = false;
  corners.forEach((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from;
    const crosses = from.y > at.y !== to.y > at.y;
    if (crosses && at.x < from.x + ((at.y - from.y) / (to.y - from.y)) * (to.x - from.x)) inside = !inside;
  });
  return inside;
}
