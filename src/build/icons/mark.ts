/**
 * The mark as shapes on a unit square: one worksheet cell cut through a soil profile. Flat, two tones, so that one
 * of them stands out on a light ribbon and the other on a dark one.
 */
export const umber = "#5a4636";
export const sand = "#d8c3ad";

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Shape {
  readonly color: string;
  /** Corners of a closed polygon, 0 to 1 from the top left. */
  readonly corners: readonly Point[];
}

/** Where one layer meets the next, from the left edge to the right. */
const topsoilFloor = wave({ depth: 0.31, swing: 0.065, start: 0.02 });
const subsoilFloor = wave({ depth: 0.68, swing: 0.08, start: -0.16 });

/**
 * @param frame width of the cell's border as a share of the square, more than 0 and less than 0.5
 * @returns shapes to be painted one over the other
 */
export function markShapes(frame: number): readonly Shape[] {
  const inside = (corner: Point) => point(frame + corner.x * (1 - 2 * frame), frame + corner.y * (1 - 2 * frame));
  const layer = (above: readonly Point[], below: readonly Point[]) => ({
    color: sand,
    corners: [...above, ...[...below].reverse()].map(inside),
  });
  return [
    { color: umber, corners: rectangle },
    layer([point(0, 0), point(1, 0)], topsoilFloor),
    layer(subsoilFloor, [point(0, 1), point(1, 1)]),
  ];
}

/** The mark for pages, at any size. */
export function markSvg(): string {
  const size = 64;
  const at = (share: number) => Number((share * size).toFixed(2));
  const polygons = markShapes(1 / 16).map(
    ({ color, corners }) =>
      `<polygon fill="${color}" points="${corners.map(({ x, y }) => `${at(x)},${at(y)}`).join(" ")}"/>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" role="img" aria-label="Loamsheet">${polygons.join("")}</svg>\n`;
}

/** An uneven line across the square: nine tenths of a wave, from `start` waves on. */
function wave({ depth, swing, start }: { depth: number; swing: number; start: number }): readonly Point[] {
  const steps = 16;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const x = step / steps;
    return point(x, depth + swing * Math.sin(2 * Math.PI * (start + 0.9 * x)));
  });
}

const rectangle = [point(0, 0), point(1, 0), point(1, 1), point(0, 1)];

function point(x: number, y: number): Point {
  return { x, y };
}
