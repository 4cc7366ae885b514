export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

export function mean(values: readonly number[]): number {
  const first = sum(values) / values.length;
  // A second pass takes up what rounding left.
  return first + values.reduce((total, value) => total + (value - first), 0) / values.length;
}

export function sumOfSquares(values: readonly number[]): number {
  return values.reduce((total, value) => total + value * value, 0);
}

/** Sample standard deviation: about the mean, over one less than their number. */
export function sampleSd(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(sumOfSquares(values.map((value) => value - middle)) / (values.length - 1));
}

/** Two lists multiplied place by place and added up. */
export function dot(first: readonly number[], second: readonly number[]): number {
  return first.reduce((total, value, index) => total + value * (second[index] ?? 0), 0);
}
