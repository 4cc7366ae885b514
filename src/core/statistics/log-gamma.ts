const stirling = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156, -3617 / 122400];
const halfLogTwoPi = 0.5 * Math.log(2 * Math.PI);

/** Natural logarithm of the gamma function, x above 0 (NaN elsewhere). Stirling's series, stepped up to where it holds. */
export function logGamma(x: number): number {
  if (!(x > 0)) return Number.NaN;
  let stepped = 1;
  let large = x;
  while (large < 12) stepped *= large++;
  const inverseSquare = 1 / (large * large);
  const series = stirling.reduceRight((sum, term) => sum * inverseSquare + term, 0) / large;
  return (large - 0.5) * Math.log(large) - large + halfLogTwoPi + series - Math.log(stepped);
}

/** Natural logarithm of the beta function, a and b above 0. */
export function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}
