import { refuseArgument } from "../fault";
import { dot, mean, sumOfSquares } from "../statistics/sums";
import { positiveInverse } from "./positive-inverse";

/** One harvested strip: which treatment (by number), in which block (by number). */
export interface Strip {
  readonly treatment: number;
  readonly block: number;
  readonly yieldBuPerAc: number;
}

export interface BlockFit {
  readonly grandMean: number;
  /** Mean of each treatment as if it had stood in every block. */
  readonly means: readonly number[];
  readonly stripsOf: readonly number[];
  /** Variances and covariances of the means, before they are multiplied by the error mean square. */
  readonly covariance: readonly (readonly number[])[];
  readonly treatmentSquares: number;
  readonly treatmentDf: number;
  readonly blockSquares: number;
  readonly blockDf: number;
  readonly errorSquares: number;
  readonly errorDf: number;
  readonly errorMeanSquare: number;
}

/**
 * Yields split into treatment, block and rest, by least squares: yield = treatment + block + rest. With every
 * treatment once in every block these are the textbook sums of squares of randomized blocks; missing or repeated
 * strips need no other formula; one block makes it the one-way analysis. All sums are taken about the mean first.
 *
 * @source gomez-gomez-1984
 */
export function blockFit(strips: readonly Strip[], treatmentCount: number, blockCount: number): BlockFit {
  const grandMean = mean(strips.map(({ yieldBuPerAc }) => yieldBuPerAc));
  const centered = strips.map((strip) => ({ ...strip, off: strip.yieldBuPerAc - grandMean }));
  const stripsOf = counts(strips, "treatment", treatmentCount);
  const stripsIn = counts(strips, "block", blockCount);
  const blockMeans = meansBy(centered, "block", stripsIn);
  const within = centered.map((strip) => ({ ...strip, off: strip.off - (blockMeans[strip.block] ?? 0) }));
  const covariance = positiveInverse(treatmentInformation(strips, stripsOf, stripsIn));
  if (!covariance) refuseSplit();

  const totals = sumsBy(within, treatmentCount);
  const effects = covariance.map((row) => dot(row, totals));
  const blockLevels = blockLevelsOf(centered, effects, stripsIn);
  const level = grandMean + mean(blockLevels);
  const rest = centered.map(({ off, treatment, block }) => off - (effects[treatment] ?? 0) - (blockLevels[block] ?? 0));
  const errorSquares = sumOfSquares(rest);
  const errorDf = strips.length - treatmentCount - blockCount + 1;
  return {
    grandMean,
    means: effects.map((effect) => level + effect),
    stripsOf,
    covariance,
    treatmentSquares: dot(effects, totals),
    treatmentDf: treatmentCount - 1,
    blockSquares: sumOfSquares(centered.map(({ block }) => blockMeans[block] ?? 0)),
    blockDf: blockCount - 1,
    errorSquares,
    errorDf,
    errorMeanSquare: errorSquares / errorDf,
  };
}

/** Variance of a weighted sum of treatment means whose weights add to 0. */
export function contrastVariance(fit: BlockFit, weights: readonly number[]): number {
  return (
    fit.errorMeanSquare *
    dot(
      weights,
      fit.covariance.map((row) => dot(row, weights)),
    )
  );
}

/** Standard error of the difference of two treatment means. */
export function differenceError(fit: BlockFit, first: number, second: number): number {
  const of = (row: number, column: number) => fit.covariance[row]?.[column] ?? 0;
  const factor = of(first, first) + of(second, second) - 2 * of(first, second);
  return Math.sqrt(fit.errorMeanSquare * factor);
}

/** What the strips tell of the treatments once blocks are taken out, with the common level fixed. */
function treatmentInformation(strips: readonly Strip[], stripsOf: readonly number[], stripsIn: readonly number[]) {
  const together = stripsOf.map(() => new Float64Array(stripsIn.length));
  for (const { treatment, block } of strips) {
    const row = together[treatment];
    if (row) row[block] = (row[block] ?? 0) + 1;
  }
  const shares = together.map((row) => row.map((count, block) => count / (stripsIn[block] ?? 1)));
  const each = mean(stripsOf) / stripsOf.length;
  return together.map((mine, row) =>
    shares.map((other, column) => (row === column ? (stripsOf[row] ?? 0) : 0) - sharedOf(mine, other) + each),
  );
}

/** Strips that two treatments have in the same blocks, by the share of the block that each is. */
export function sharedOf(counts: Float64Array, shares: Float64Array): number {
  let sum = 0;
  for (let block = 0; block < counts.length; block++) sum += (counts[block] ?? 0) * (shares[block] ?? 0);
  return sum;
}

interface Centered extends Strip {
  readonly off: number;
}

function blockLevelsOf(centered: readonly Centered[], effects: readonly number[], stripsIn: readonly number[]) {
  const left = centered.map((strip) => ({ ...strip, off: strip.off - (effects[strip.treatment] ?? 0) }));
  return meansBy(left, "block", stripsIn);
}

function counts(strips: readonly Strip[], by: "treatment" | "block", size: number): number[] {
  const found = Array.from({ length: size }, () => 0);
  for (const strip of strips) found[strip[by]] = (found[strip[by]] ?? 0) + 1;
  return found;
}

function meansBy(strips: readonly Centered[], by: "block", sizes: readonly number[]): number[] {
  const sums = sizes.map(() => 0);
  for (const strip of strips) sums[strip[by]] = (sums[strip[by]] ?? 0) + strip.off;
  return sums.map((sum, index) => sum / (sizes[index] ?? 1));
}

function sumsBy(strips: readonly Centered[], treatmentCount: number): number[] {
  const sums = Array.from({ length: treatmentCount }, () => 0);
  for (const { treatment, off } of strips) sums[treatment] = (sums[treatment] ?? 0) + off;
  return sums;
}

function refuseSplit(): never {
  refuseArgument(
    "blocks",
    "some treatments never stand in a block with the others, so the ground cannot be told from the treatment.",
  );
}
