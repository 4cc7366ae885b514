import { findBend } from "./bend-search";
import { linearFit, polish, unitCovariance, type ScaledPairs } from "./least-squares";
import type { BendSearch, CurveParameters, ResponseModel } from "./response-model";
import type { ResponsePairs } from "./response-pairs";

/** A curve fitted to rates and yields that were each divided by their largest. */
export interface ScaledFit {
  readonly scaled: ScaledPairs;
  readonly parameters: CurveParameters;
  /** For a residual variance of 1. */
  readonly covariance: readonly (readonly number[])[];
  readonly yieldScale: number;
}

/** Why a curve does not fit these data; the sentence stands after the argument's name. */
export interface NoFit {
  readonly argument: "x" | "y";
  readonly because: string;
}

/** Least squares of one model: by QR where it is a sum of terms, else by a searched bend and steps from there. */
export function scaledFit(model: ResponseModel, pairs: ResponsePairs): ScaledFit | NoFit {
  const tooFew = fewRates(model, pairs);
  if (tooFew) return tooFew;
  const rateScale = pairs.rates.at(-1) ?? NaN;
  const yieldScale = Math.max(...pairs.yieldsBuPerAc.map(Math.abs));
  const scaled = {
    x: pairs.rates.map((rate) => rate / rateScale),
    y: pairs.yieldsBuPerAc.map((one) => one / yieldScale),
  };
  const parameters = model.bend ? bentFit(model, model.bend, scaled) : linearFit(model, scaled);
  if (parameters !== null && "because" in parameters) return parameters;
  const covariance = parameters && unitCovariance(model, parameters, scaled);
  if (!parameters || !covariance) {
    return { argument: "x", because: `the rates do not tell the numbers of ${model.label} apart: spread them wider.` };
  }
  return { scaled, parameters, covariance, yieldScale };
}

export function isFitted(fit: ScaledFit | NoFit): fit is ScaledFit {
  return "covariance" in fit;
}

function fewRates({ label, parameters }: ResponseModel, { distinctRates, yieldsBuPerAc }: ResponsePairs): NoFit | null {
  const atLeast = parameters.length + 1;
  if (distinctRates.length < atLeast) {
    return {
      argument: "x",
      because: `${label} needs at least ${atLeast} different rates; got ${distinctRates.length}.`,
    };
  }
  const isLevel = yieldsBuPerAc.every((one) => one === yieldsBuPerAc[0]);
  return isLevel ? { argument: "y", because: "all yields are the same: there is no response to fit." } : null;
}

function bentFit(model: ResponseModel, bend: BendSearch, scaled: ScaledPairs): CurveParameters | NoFit {
  const found = findBend(bend, scaled);
  switch (found.kind) {
    case "found":
      return polish(model, found.parameters, scaled);
    case "falling":
      return { argument: "y", because: `yields do not rise with x, so ${model.label} has no rise to follow.` };
    case "low":
      return { argument: "y", because: bend.atLow };
    case "high":
      return { argument: "y", because: bend.atHigh };
  }
}
