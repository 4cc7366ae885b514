/** The next of 1, 2, 2.5, 5 or 10 times a power of ten: steps that a person counts in. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const factor = [1, 2, 2.5, 5, 10].find((candidate) => candidate * power >= least * (1 - 1e-9)) ?? 10;
  return factor * power;
}
