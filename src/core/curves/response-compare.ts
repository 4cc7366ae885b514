import { refuse } from "../fault";
import { within } from "../limit";
import { curveLimits } from "./curve-limits";
import { fitModel, type ResponseFit } from "./response-fit";
import type { ResponseModelKey } from "./response-models";
import { responsePairs, type TrialPairs } from "./response-pairs";
import type { NoFit } from "./scaled-fit";

export interface ResponseCompareInput extends TrialPairs {
  readonly priceRatio: number;
}

export interface ComparedModel {
  readonly model: ResponseModelKey;
  readonly fit: ResponseFit | NoFit;
}

/** Models shown beside each other; one of them rarely fits much better, yet their best rates can lie far apart. */
const compared = ["quadratic-plateau", "linear-plateau", "quadratic", "linear", "mitscherlich", "square-root"] as const;

export interface ResponseCompare {
  readonly models: readonly ComparedModel[];
  /** The one with the lowest AICc, where that can be told. */
  readonly closest: ResponseModelKey | null;
}

/**
 * Fits every model to the same trial. Models that fit alike may still recommend very different rates, so all are shown.
 *
 * @source cerrato-blackmer-1990, hurvich-tsai-1989
 */
export function responseCompare(input: ResponseCompareInput): ResponseCompare {
  within("priceRatio", input.priceRatio, curveLimits.priceRatio);
  const pairs = responsePairs(input);
  const models = compared.map((model) => ({
    model,
    fit: fitModel(model, pairs, { confidencePct: 95, priceRatio: input.priceRatio }),
  }));
  const [first] = models;
  if (first && models.every(({ fit }) => "because" in fit) && "because" in first.fit) {
    refuse({ kind: "refused", ...first.fit });
  }
  return { models, closest: closestOf(models) };
}

function closestOf(models: readonly ComparedModel[]): ResponseModelKey | null {
  let closest: { model: ResponseModelKey; aicc: number } | null = null;
  for (const { model, fit } of models) {
    if ("because" in fit || fit.aicc === null) continue;
    if (closest === null || fit.aicc < closest.aicc) closest = { model, aicc: fit.aicc };
  }
  return closest?.model ?? null;
}
