import type { ResponseCompare } from "../../core/curves/response-compare";
import type { Estimate } from "../../core/curves/fitting";
import type { ResponseFit } from "../../core/curves/response-fit";
import type { ParameterFacts } from "../../core/curves/response-model";
import { responseModels } from "../../core/curves/response-models";
import type { RatePoint, ResponseRange } from "../../core/curves/response-range";
import { fitLabels } from "./curve-parameters";
import type { Matrix } from "../frame";

type Row = readonly (string | number)[];

/** A fit as it spills: its parameters, what follows from them, how close it comes, what it was made from. */
export function fitTable(fit: ResponseFit, confidencePct: number): Matrix<string | number> {
  const held = fit.best ? heldNote(fit, fit.best) : "";
  const best = fit.best ? [estimateRow(fit.best, held && `units of x, ${held}`)] : [];
  return [
    ["Item", "Value", "Standard error", `Low ${confidencePct} %`, `High ${confidencePct} %`, "Unit"],
    ...fit.parameters.map((estimate) => estimateRow(estimate)),
    ...fit.derived.map((estimate) => estimateRow(estimate)),
    ...best,
    plainRow("R²", fit.r2, "share of variation explained"),
    plainRow("Residual SD", fit.residualSdBuPerAc, "bu/ac"),
    plainRow("AICc", fit.aicc ?? "", fit.aicc === null ? "cannot be told from so few pairs" : "lower is closer"),
    plainRow("Pairs used", fit.pairs, fit.leftOut > 0 ? `${fit.leftOut} half-filled left out` : ""),
    plainRow("Degrees of freedom", fit.degreesOfFreedom, ""),
    plainRow("Lowest rate tested", fit.lowestRate, "units of x"),
    plainRow(fitLabels.highestRate, fit.highestRate, "units of x"),
  ];
}

/** Each model beside the others. */
export function compareTable({ models, closest }: ResponseCompare): Matrix<string | number> {
  return [
    ["Model", "Best rate, units of x", "Standard error", "R²", "Residual SD, bu/ac", "AICc", "Note"],
    ...models.map(({ model, fit }): Row => {
      const { label } = responseModels[model];
      if ("because" in fit) return [label, "", "", "", "", "", `not fitted: ${fit.because}`];
      const notes = [
        ...(model === closest ? ["lowest AICc"] : []),
        ...(fit.best === null ? ["bends up: no best rate"] : []),
        ...(fit.best?.standardError === null ? [heldNote(fit, fit.best)] : []),
      ];
      return [
        label,
        fit.best?.value ?? "",
        fit.best?.standardError ?? "",
        fit.r2,
        fit.residualSdBuPerAc,
        fit.aicc ?? "",
        notes.join("; "),
      ];
    }),
  ];
}

/** The best rate between those that return almost as much. */
export function rangeTable(range: ResponseRange, shortfallUsd: number): Matrix<string | number> {
  return [
    ["Rate", "Units of x", "Yield, bu/ac", "Return over no input, $/ac", "Note"],
    pointRow(`Lowest within $${shortfallUsd}`, range.low, ""),
    pointRow("Best", range.best, edgeWords(range.heldAt, range.freeRate)),
    pointRow(`Highest within $${shortfallUsd}`, range.high, ""),
  ];
}

/** What it means that the best rate is held at an edge. */
export function edgeWords(heldAt: ResponseRange["heldAt"], freeRate: number): string {
  if (heldAt === "no input") return "no rate pays: the first unit brings less than it costs";
  if (heldAt === "nothing") return "";
  const past = freeRate === Infinity ? "the curve still pays there" : `the curve would go on to ${shortened(freeRate)}`;
  return `held at the highest rate tested: ${past}, but past the trial it is a guess`;
}

export function unitWords({ bushels, units }: ParameterFacts): string {
  if (bushels === 0) return units > 0 ? "units of x" : "per unit of x";
  if (units === 0) return "bu/ac";
  if (units === -2) return "bu/ac per squared unit of x";
  return units === -1 ? "bu/ac per unit of x" : "bu/ac per √unit of x";
}

function estimateRow({ facts, value, standardError, low, high }: Estimate, note = ""): Row {
  return [facts.label, value, standardError ?? "", low ?? "", high ?? "", note || unitWords(facts)];
}

function heldNote(fit: ResponseFit, best: Estimate): string {
  if (best.standardError !== null) return "";
  return best.value >= fit.highestRate ? "held at the highest rate tested" : "no rate pays";
}

function plainRow(label: string, value: number | string, note: string): Row {
  return [label, value, "", "", "", note];
}

function pointRow(label: string, point: RatePoint, note: string): Row {
  return [label, point.rate, point.yieldBuPerAc, point.returnUsdPerAc, note];
}

function shortened(rate: number): string {
  return rate.toLocaleString("en-US", { maximumSignificantDigits: 4 });
}
