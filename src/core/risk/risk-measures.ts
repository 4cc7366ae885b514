import { integrate, quadratureNodes } from "../statistics/gauss-legendre";
import { invertCdf } from "../statistics/invert-cdf";
import type { Distribution } from "./distribution";

/** Measures of an uncertain return, larger being better. */
export interface RiskMeasures {
  readonly mean: number;
  readonly sd: number;
  /** The value that a share of all years, 0 to 1, lies at or below. */
  percentile(share: number): number;
  /** Mean of the worst share of the years (conditional value at risk). */
  tailMean(share: number): number;
  /** What years below a target fall short of it, averaged over all years. */
  shortfall(target: number): number;
  /** Root of the mean squared shortfall over all years. */
  semideviation(target: number): number;
  /** The certain return that is worth as much to a person of this risk aversion (per $, 0 or more). */
  certaintyEquivalent(riskAversion: number): number;
}

/** Even steps of a first look at where the chances rise. */
const firstLook = 32;
/** Shares of the years that the panels of the integrals end at. */
const panelShares = [0.002, 0.06, 0.35, 0.8, 0.998];

/**
 * Every measure is an integral of the chances, by Gauss-Legendre quadrature:
 *
 *   mean             highest - ∫ F
 *   variance         2 ∫ (highest - x) F - (highest - mean)²
 *   shortfall        ∫ F up to the target;  tail mean  = percentile - ∫ F up to it / share
 *   certain value    -ln(e^(-r highest) + r ∫ e^(-r x) F) / r      (utility -e^(-r x))
 *
 * @source risk-measures
 */
export function riskMeasures(distribution: Distribution): RiskMeasures {
  const { lowest, highest, cdf } = distribution;
  const nodes = quadratureNodes(breakpointsOf(distribution)).map((node) => ({ ...node, below: cdf(node.at) }));
  const sumOf = (f: (x: number) => number) =>
    nodes.reduce((sum, { at, weight, below }) => sum + weight * below * f(at), 0);
  const mean = highest - sumOf(() => 1);
  const variance = 2 * sumOf((x) => highest - x) - (highest - mean) ** 2;
  const percentile = (share: number) => invertCdf(cdf, share, bracketOf(share, nodes, distribution));
  return {
    mean,
    sd: Math.sqrt(Math.max(0, variance)),
    percentile,
    tailMean: (share) => tailMean(share, percentile(share), distribution),
    shortfall: (target) => below(target, distribution, () => 1),
    semideviation: (target) => Math.sqrt(Math.max(0, 2 * below(target, distribution, (x) => target - x))),
    certaintyEquivalent: (aversion) => {
      if (aversion === 0) return mean;
      // Measured from the lowest value, so that no power overflows.
      const rest = aversion * sumOf((x) => Math.exp(-aversion * (x - lowest)));
      return lowest - Math.log(Math.exp(-aversion * (highest - lowest)) + rest) / aversion;
    },
  };
}

/** Panels that lie where the chances rise, so that a narrow rise in a wide range is seen. */
function breakpointsOf({ lowest, highest, cdf }: Distribution): number[] {
  const look = Array.from({ length: firstLook + 1 }, (_, step) => {
    const at = lowest + ((highest - lowest) * step) / firstLook;
    return { at, below: cdf(at) };
  });
  const inner = panelShares.map((share) => {
    const above = look.findIndex(({ below }) => below >= share);
    const right = look[above];
    const left = look[above - 1];
    if (!left || !right) return lowest;
    return left.at + ((right.at - left.at) * (share - left.below)) / (right.below - left.below);
  });
  return [lowest, ...inner, highest].sort((a, b) => a - b);
}

/** The two values between which a share is passed: narrower than the whole range, so that few steps find it. */
function bracketOf(
  share: number,
  nodes: readonly { readonly at: number; readonly below: number }[],
  { lowest, highest }: Distribution,
): { low: number; high: number } {
  const above = nodes.findIndex(({ below }) => below >= share);
  if (above === -1) return { low: nodes.at(-1)?.at ?? lowest, high: highest };
  return { low: nodes[above - 1]?.at ?? lowest, high: nodes[above]?.at ?? highest };
}

function tailMean(share: number, percentile: number, { lowest, cdf }: Distribution): number {
  return percentile - integrate(cdf, upTo(percentile, lowest)) / share;
}

/** Integral of f times the chances, up to a target. */
function below(target: number, { lowest, highest, cdf }: Distribution, f: (x: number) => number): number {
  if (target <= lowest) return 0;
  const inside = integrate((x) => f(x) * cdf(x), upTo(Math.min(target, highest), lowest));
  return target <= highest ? inside : inside + integrate(f, [highest, target]);
}

function upTo(end: number, lowest: number): number[] {
  return [lowest, (lowest + end) / 2, end];
}
