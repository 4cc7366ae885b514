import { normalCdf } from "./normal";
import { spreadAverage } from "./spread-average";

/**
 * Chance that (Z + delta) / √(χ²/df) is at most t: the noncentral t distribution, by integrating
 * Φ(t·s − delta) over the spread s.
 *
 * @param df degrees of freedom, above 0
 * @param delta noncentrality, any
 */
export function noncentralTCdf(t: number, df: number, delta: number): number {
  if (!(df > 0) || Number.isNaN(t) || Number.isNaN(delta)) return Number.NaN;
  if (t < 0) return 1 - noncentralTCdf(-t, df, -delta);
  if (t === 0) return normalCdf(-delta);
  const chance = spreadAverage((s) => normalCdf(t * s - delta), df, { at: delta / t, width: 1 / t });
  return Math.min(1, Math.max(0, chance));
}
