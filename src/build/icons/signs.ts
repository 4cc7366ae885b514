import { markShapes, sand, umber, type Point, type Shape } from "./mark";

/** Signs that tell our ribbon buttons apart: the mark with one more shape on a plain corner. */
export const signs = { check: tick(), find: lens() } as const satisfies Record<string, readonly Shape[]>;

export type Sign = keyof typeof signs;

/** The corner that a sign stands on: the lower right of the square. */
const corner = 0.375;

/**
 * @param frame width of the mark's border as a share of the square
 * @returns the mark with a sign in its lower right corner
 */
export function signShapes(sign: Sign, frame: number): readonly Shape[] {
  return [...markShapes(frame), square(corner, 1, umber), square(corner + frame, 1 - frame, sand), ...signs[sign]];
}

function square(start: number, end: number, color: string): Shape {
  return { color, corners: [at(start, start), at(end, start), at(end, end), at(start, end)] };
}

function tick(): Shape[] {
  const corners = [at(0.47, 0.7), at(0.54, 0.63), at(0.63, 0.72), at(0.83, 0.48), at(0.9, 0.55), at(0.64, 0.86)];
  return [{ color: umber, corners }];
}

/** A ring with a handle. */
function lens(): Shape[] {
  const center = at(0.63, 0.63);
  const handle = [at(0.68, 0.74), at(0.75, 0.67), at(0.91, 0.83), at(0.84, 0.9)];
  return [
    { color: umber, corners: handle },
    { color: umber, corners: circle(center, 0.17) },
    { color: sand, corners: circle(center, 0.09) },
  ];
}

function circle({ x, y }: Point, radius: number): Point[] {
  const steps = 24;
  return Array.from({ length: steps }, (_, step) => {
    const turn = (2 * Math.PI * step) / steps;
    return at(x + radius * Math.cos(turn), y + radius * Math.sin(turn));
  });
}

function at(x: number, y: number): Point {
  return { x, y };
}
