import { normalCdf, normalPdf } from "../statistics/normal";

/** Beyond this the normal CDF is 0 or 1 to the last digit. */
const far = 9;
const knotsPerUnit = 16;
let knots: readonly Knot[] | undefined;

interface Knot {
  readonly slope: number;
  readonly integral: number;
}

function tabulated(): readonly Knot[] {
  return Array.from({ length: 2 * far * knotsPerUnit + 1 }, (_, index) => {
    const z = index / knotsPerUnit - far;
    const slope = normalCdf(z);
    return { slope, integral: z * slope + normalPdf(z) };
  });
}

/**
 * Mean of the normal CDF between two points: the difference of its integral z Φ(z) + φ(z), over that of z.
 * Good to about 1e-6; called some ten thousand times for one distribution, so the integral is read from a table.
 */
export function averageNormalCdf(from: number, to: number): number {
  if (from >= far && to >= far) return 1;
  if (from <= -far && to <= -far) return 0;
  // Nearer than this the difference would lose more digits than the middle point does.
  if (Math.abs(to - from) < 0.01) return normalCdf((from + to) / 2);
  return (integralTo(to) - integralTo(from)) / (to - from);
}

/** Cubic between knots, by value and slope: off by less than 3e-8. */
function integralTo(z: number): number {
  if (z >= far) return z;
  const place = (z + far) * knotsPerUnit;
  const index = Math.floor(place);
  knots ??= tabulated();
  const left = knots[index];
  const right = knots[index + 1];
  if (!left || !right) return 0;
  const t = place - index;
  const rise = right.integral - left.integral;
  const bend = left.slope / knotsPerUnit - rise;
  const bendBack = right.slope / knotsPerUnit - rise;
  return left.integral + t * (rise + (1 - t) * (bend * (1 - t) - bendBack * t));
}
