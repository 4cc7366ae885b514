import { refuseArgument } from "../fault";
import { within } from "../limit";
import { curveLimits } from "./curve-limits";
import { checkParameters } from "./response-best";
import type { CurveParameters, ResponseModel } from "./response-model";
import { responseModels, type ResponseModelKey } from "./response-models";

export interface ResponseYieldInput {
  readonly model: ResponseModelKey;
  readonly parameters: CurveParameters;
  readonly rate: number;
}

export interface ResponseYield {
  readonly yieldBuPerAc: number;
  readonly withNoneBuPerAc: number;
  readonly gainBuPerAc: number;
}

/** Yield that a response curve expects at a rate. */
export function responseYield({ model: key, parameters, rate }: ResponseYieldInput): ResponseYield {
  const model: ResponseModel = responseModels[key];
  checkParameters(model, parameters);
  within("x", rate, curveLimits.rate);
  const yieldBuPerAc = model.yieldAt(parameters, rate);
  if (Number.isNaN(yieldBuPerAc)) refuseArgument("parameters", model.bendsWhen);
  const withNoneBuPerAc = model.yieldAt(parameters, 0);
  return { yieldBuPerAc, withNoneBuPerAc, gainBuPerAc: yieldBuPerAc - withNoneBuPerAc };
}
