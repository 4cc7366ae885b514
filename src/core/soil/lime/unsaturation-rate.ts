import type { LimeForm } from "../../../reference/soil";

type Unsaturation = Extract<LimeForm, { kind: "unsaturation" }>;

/**
 * Lime by the Adams-Evans buffer, lb/ac.
 *
 *   rate per pH × (start − buffer) / h1 × (h1 − h2) × field factor
 *
 * h is the share of exchange sites held by acidity at a pH: the smaller root of pH = 7.79 − 5.55 h + 2.27 h²;
 * h1 at the present pH, h2 at the target. Holds from pH 4.5 to 6.8.
 *
 * @source adams-evans-1962
 */
export function unsaturationRate(form: Unsaturation, ph: number, bufferPh: number, targetPh: number): number {
  const now = acidShare(form.curve, ph);
  const then = acidShare(form.curve, targetPh);
  return ((form.ratePerPh * (form.startPh - bufferPh)) / now) * (now - then) * form.fieldFactor;
}

function acidShare({ constant, linear, square }: Unsaturation["curve"], ph: number): number {
  const discriminant = linear ** 2 - 4 * square * (constant - ph);
  return (-linear - Math.sqrt(discriminant)) / (2 * square);
}
