import { refuse } from "../fault";
import { within } from "../limit";
import { pctToFraction } from "../units/units";
import { pestLimits } from "./pest-limits";
import { lossPctAt, weedCurve, type WeedCurve, type WeedCurveInput } from "./weed-curve";

export interface WeedControlInput extends WeedCurveInput {
  readonly yieldBuPerAc: number;
  readonly controlPct: number;
  readonly priceUsdPerBu: number;
  readonly costUsdPerAc: number;
}

export interface WeedBenefit {
  readonly netUsdPerAc: number;
  readonly savedUsdPerAc: number;
  readonly lossPct: number;
  /** Lost to the weeds that the treatment leaves. */
  readonly leftPct: number;
  /** Saved, with half and with twice the slope. */
  readonly lowSavedUsdPerAc: number;
  readonly highSavedUsdPerAc: number;
  /** Weeds at which the pass begins to pay; null: it does not at any density. */
  readonly payingDensity: number | null;
  readonly curve: WeedCurve;
}

/**
 * What a treatment saves, less its cost.
 *
 *   price × yield × (loss at density - loss at the density left) - cost
 *
 * @source cousens-1985
 */
export function weedBenefit({ density, ...input }: WeedControlInput & { readonly density: number }): WeedBenefit {
  within("density", density, pestLimits.density);
  const { curve, left, worthUsdPerAc } = read(input);
  const saved = (times: number) => {
    const own = { ...curve, slopePct: curve.slopePct * times };
    return worthUsdPerAc * pctToFraction(lossPctAt(density, own) - lossPctAt(density * left, own));
  };
  return {
    netUsdPerAc: saved(1) - input.costUsdPerAc,
    savedUsdPerAc: saved(1),
    lossPct: lossPctAt(density, curve),
    leftPct: lossPctAt(density * left, curve),
    lowSavedUsdPerAc: Math.min(saved(0.5), saved(2)),
    highSavedUsdPerAc: Math.max(saved(0.5), saved(2)),
    payingDensity: payingDensityOf(curve, left, (input.costUsdPerAc / worthUsdPerAc) * 100),
    curve,
  };
}

export interface WeedThreshold {
  readonly density: number;
  /** With twice and with half the slope; null: it pays at none. */
  readonly lowDensity: number | null;
  readonly highDensity: number | null;
  readonly curve: WeedCurve;
}

/** Density of weeds at which a treatment begins to pay for itself. */
export function weedThreshold(input: WeedControlInput): WeedThreshold {
  const { curve, left, worthUsdPerAc } = read(input);
  const costPct = (input.costUsdPerAc / worthUsdPerAc) * 100;
  const at = (times: number) => payingDensityOf({ ...curve, slopePct: curve.slopePct * times }, left, costPct);
  const density = at(1);
  if (density === null) {
    refuse({ kind: "noSolution", because: "The treatment costs more than it can save at any density of weeds." });
  }
  return { density, lowDensity: at(2), highDensity: at(0.5), curve };
}

function read(input: WeedControlInput) {
  within("yield", input.yieldBuPerAc, pestLimits.yield);
  within("control", input.controlPct, pestLimits.control);
  within("price", input.priceUsdPerBu, pestLimits.price);
  within("cost", input.costUsdPerAc, pestLimits.cost);
  return {
    curve: weedCurve(input),
    left: 1 - pctToFraction(input.controlPct),
    worthUsdPerAc: input.priceUsdPerBu * input.yieldBuPerAc,
  };
}

/**
 * The lower density at which the loss saved is worth the cost. With x = slope × density, c the cost in percent of
 * the crop's worth, r the share of weeds left and A the ceiling, the loss saved equals c where
 *
 *   (c r / A²) x² + (c (1 + r) / A - (1 - r)) x + c = 0
 *
 * Past the upper root so many weeds are left that the pass does not pay again.
 */
function payingDensityOf({ slopePct, ceilingPct }: WeedCurve, left: number, costPct: number): number | null {
  if (costPct === 0) return 0;
  if (!Number.isFinite(costPct)) return null;
  const square = (costPct * left) / ceilingPct ** 2;
  const linear = (costPct * (1 + left)) / ceilingPct - (1 - left);
  const inside = linear ** 2 - 4 * square * costPct;
  if (linear >= 0 || inside < 0) return null;
  const density = (2 * costPct) / (-linear + Math.sqrt(inside)) / slopePct;
  return Number.isFinite(density) ? density : null;
}
