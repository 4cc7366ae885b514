import erfc from "@stdlib/math-base-special-erfc";
import erfcinv from "@stdlib/math-base-special-erfcinv";

const rootTwoPi = Math.sqrt(2 * Math.PI);

/** Height of the standard normal curve at z. */
export function normalPdf(z: number): number {
  return Math.exp(-0.5 * z * z) / rootTwoPi;
}

/** Chance that a standard normal value is at most z. */
export function normalCdf(z: number): number {
  return 0.5 * erfc(-z * Math.SQRT1_2);
}

/** The z that a standard normal value stays below with chance p (0 to 1; NaN elsewhere). */
export function normalQuantile(p: number): number {
  return 0 - Math.SQRT2 * erfcinv(2 * p);
}

/** How many standard deviations a range with so much confidence (%, 0 to 100) reaches to either side. */
export function zForConfidence(confidencePct: number): number {
  return normalQuantile(0.5 + confidencePct / 200);
}
