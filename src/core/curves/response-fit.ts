import { refuse } from "../fault";
import { within } from "../limit";
import { curveLimits } from "./curve-limits";
import { Fitting, type Estimate } from "./fitting";
import type { CurveParameters, ParameterFacts, ResponseModel } from "./response-model";
import { responseModels, type ResponseModelKey } from "./response-models";
import { responsePairs, type ResponsePairs, type TrialPairs } from "./response-pairs";
import { isFitted, scaledFit, type NoFit } from "./scaled-fit";

export interface ResponseFitInput extends TrialPairs {
  readonly model: ResponseModelKey;
  /** Share of confidence of the ranges. */
  readonly confidencePct: number;
  /** Price of a unit of input in bushels, for the best rate; null: not asked. */
  readonly priceRatio: number | null;
}

export interface ResponseFit {
  readonly model: ResponseModelKey;
  readonly parameters: readonly Estimate[];
  readonly derived: readonly Estimate[];
  /** The most profitable rate, held within the highest rate tested; null: not asked, or the curve has none. */
  readonly best: Estimate | null;
  /** Share of the variation about the mean yield that the curve explains, 0 to 1. */
  readonly r2: number;
  readonly residualSdBuPerAc: number;
  readonly missedSquares: number;
  readonly pairs: number;
  readonly leftOut: number;
  readonly degreesOfFreedom: number;
  /** Akaike's criterion for small samples, lower is better; null for too few pairs or a curve through every point. */
  readonly aicc: number | null;
  readonly lowestRate: number;
  readonly highestRate: number;
}

/**
 * Fits a response curve by least squares: one solution by QR for sums of terms, a searched bend and
 * Levenberg-Marquardt steps for the others. Standard errors are those of the curve's tangent at the solution; those
 * of derived numbers by the delta method.
 *
 * @source cerrato-blackmer-1990, hurvich-tsai-1989
 */
export function responseFit(input: ResponseFitInput): ResponseFit {
  within("confidence", input.confidencePct, curveLimits.confidence);
  if (input.priceRatio !== null) within("priceRatio", input.priceRatio, curveLimits.priceRatio);
  const fit = fitModel(input.model, responsePairs(input), input);
  if ("because" in fit) refuse({ kind: "refused", ...fit });
  return fit;
}

/** One model fitted to pairs already checked, or why it does not fit them. */
export function fitModel(
  key: ResponseModelKey,
  pairs: ResponsePairs,
  { confidencePct, priceRatio }: Pick<ResponseFitInput, "confidencePct" | "priceRatio">,
): ResponseFit | NoFit {
  const model: ResponseModel = responseModels[key];
  const scaled = scaledFit(model, pairs);
  if (!isFitted(scaled)) return scaled;
  const fitting = new Fitting(model, pairs, scaled, confidencePct);
  return {
    model: key,
    parameters: model.parameters.map((facts, index) => fitting.estimate(facts, (p) => p[index] ?? NaN)),
    derived: model.derived.flatMap(({ of, ...facts }) => fitting.estimateIfAny(facts, of)),
    best: priceRatio === null ? null : bestEstimate(model, fitting, priceRatio),
    ...fitting.summary(),
  };
}

const bestFacts: ParameterFacts = { label: "Best rate", bushels: 0, units: 1 };

/** Inside the rates tested the best rate has a standard error; held at an edge it has none. */
function bestEstimate(model: ResponseModel, fitting: Fitting, priceRatio: number): Estimate | null {
  const best = (parameters: CurveParameters) => model.bestRate(parameters, priceRatio);
  const free = best(fitting.parameters);
  // A fitted curve that bends up has no best rate; the fit itself stands.
  if (Number.isNaN(free)) return null;
  const highest = fitting.highestRate;
  if (free > 0 && free < highest) return fitting.estimate(bestFacts, best);
  return { facts: bestFacts, value: Math.min(free, highest), standardError: null, low: null, high: null };
}
