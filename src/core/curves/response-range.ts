import { refuseArgument } from "../fault";
import { within } from "../limit";
import { invertCdf } from "../statistics/invert-cdf";
import { curveLimits } from "./curve-limits";
import { responseBest, type ResponseBest } from "./response-best";
import type { CurveParameters, ResponseModel } from "./response-model";
import { responseModels, type ResponseModelKey } from "./response-models";

export interface ResponseRangeInput {
  readonly model: ResponseModelKey;
  readonly parameters: CurveParameters;
  readonly inputPriceUsd: number;
  readonly cropPriceUsdPerBu: number;
  readonly highestRate: number | null;
  /** $/ac that one may fall short of the best. */
  readonly withinUsdPerAc: number;
}

export interface RatePoint {
  readonly rate: number;
  readonly yieldBuPerAc: number;
  /** Gain over no input, less the input, $/ac. */
  readonly returnUsdPerAc: number;
}

export interface ResponseRange {
  readonly low: RatePoint;
  readonly best: RatePoint;
  readonly high: RatePoint;
  readonly priceRatio: number;
  readonly heldAt: ResponseBest["heldAt"];
  readonly freeRate: number;
}

/** The best rate with the lowest and highest rates that return almost as much: curves are flat near their best. */
export function responseRange(input: ResponseRangeInput): ResponseRange {
  const { parameters, inputPriceUsd, cropPriceUsdPerBu, highestRate, withinUsdPerAc } = input;
  within("inputPrice", inputPriceUsd, curveLimits.inputPrice);
  within("cropPrice", cropPriceUsdPerBu, curveLimits.cropPrice);
  within("within", withinUsdPerAc, curveLimits.shortfall);
  if (cropPriceUsdPerBu === 0) refuseArgument("cropPrice", "is 0: no rate pays.");
  const priceRatio = inputPriceUsd / cropPriceUsdPerBu;
  const best = responseBest({ model: input.model, parameters, priceRatio, highestRate });
  const model: ResponseModel = responseModels[input.model];
  const withNone = model.yieldAt(parameters, 0);
  const returnAt = (rate: number) =>
    cropPriceUsdPerBu * (model.yieldAt(parameters, rate) - withNone) - inputPriceUsd * rate;
  const level = returnAt(best.bestRate) - withinUsdPerAc;
  const point = (rate: number): RatePoint => ({
    rate,
    yieldBuPerAc: model.yieldAt(parameters, rate),
    returnUsdPerAc: returnAt(rate),
  });
  return {
    low: point(lowestAt(returnAt, level, best.bestRate)),
    best: point(best.bestRate),
    high: point(highestAt(returnAt, level, best.bestRate, highestRate)),
    priceRatio,
    heldAt: best.heldAt,
    freeRate: best.freeRate,
  };
}

type ReturnAt = (rate: number) => number;

/** Returns rise to the best and fall after it, so each side has one crossing, if it has any. */
function lowestAt(returnAt: ReturnAt, level: number, bestRate: number): number {
  if (bestRate === 0 || returnAt(0) >= level) return 0;
  return invertCdf(returnAt, level, { low: 0, high: bestRate });
}

function highestAt(returnAt: ReturnAt, level: number, bestRate: number, highestRate: number | null): number {
  const most = highestRate ?? curveLimits.rate.max;
  if (returnAt(most) >= level) return most;
  return invertCdf((rate) => -returnAt(rate), -level, { low: bestRate, high: most });
}
