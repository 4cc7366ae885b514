import { refuseArgument } from "../fault";
import { within } from "../limit";
import { curveLimits } from "./curve-limits";
import type { CurveParameters, ResponseModel } from "./response-model";
import { responseModels, type ResponseModelKey } from "./response-models";

export interface ResponseBestInput {
  readonly model: ResponseModelKey;
  readonly parameters: CurveParameters;
  /** Price of a unit of input over the price of a bushel. */
  readonly priceRatio: number;
  /** Highest rate of the trial; null: not known. */
  readonly highestRate: number | null;
}

export interface ResponseBest {
  readonly bestRate: number;
  /** What the curve alone would say; Infinity where it never stops paying. */
  readonly freeRate: number;
  readonly heldAt: "nothing" | "no input" | "highest rate";
  readonly yieldBuPerAc: number;
  /** Over no input at all. */
  readonly gainBuPerAc: number;
  /** The gain less the input's price in bushels. */
  readonly netGainBuPerAc: number;
}

/**
 * The rate that leaves most over its cost: where one more unit of input brings as many bushels as it costs.
 *
 * Never below 0; never above the highest rate of the trial, past which the curve is a guess. A curve that pays all the
 * way needs that rate.
 *
 * @source cerrato-blackmer-1990
 */
export function responseBest(input: ResponseBestInput): ResponseBest {
  const { parameters, priceRatio, highestRate } = input;
  const model: ResponseModel = responseModels[input.model];
  checkParameters(model, parameters);
  within("priceRatio", priceRatio, curveLimits.priceRatio);
  if (highestRate !== null) within("highestRate", highestRate, curveLimits.rate);
  const freeRate = model.bestRate(parameters, priceRatio);
  if (Number.isNaN(freeRate)) refuseArgument("parameters", model.bendsWhen);
  const bestRate = Math.min(freeRate, highestRate ?? Infinity);
  if (bestRate === Infinity) {
    const because =
      "on this curve every further unit pays: give the highest rate of the trial, where the answer stops.";
    refuseArgument("highestRate", because);
  }
  const yieldBuPerAc = model.yieldAt(parameters, bestRate);
  const gainBuPerAc = yieldBuPerAc - model.yieldAt(parameters, 0);
  return {
    bestRate,
    freeRate,
    heldAt: freeRate <= 0 ? "no input" : bestRate < freeRate ? "highest rate" : "nothing",
    yieldBuPerAc,
    gainBuPerAc,
    netGainBuPerAc: gainBuPerAc - priceRatio * bestRate,
  };
}

/** Refuses a list of parameters that is too short, too long or out of range for the curve. */
export function checkParameters(model: ResponseModel, parameters: CurveParameters): void {
  const names = model.parameters.map(({ label }) => label.toLowerCase());
  if (parameters.length !== names.length) {
    const because = `${model.label} takes ${names.length} numbers (${names.join(", ")}); got ${parameters.length}.`;
    refuseArgument("parameters", because);
  }
  for (const parameter of parameters) within("parameters", parameter, curveLimits.parameter);
}
