import { tForConfidence } from "../statistics/student-t";
import { mean, sumOfSquares } from "../statistics/sums";
import { missedSquares } from "./least-squares";
import type { CurveParameters, ParameterFacts, ResponseModel } from "./response-model";
import type { ResponsePairs } from "./response-pairs";
import type { ScaledFit } from "./scaled-fit";

/** A number with what the trial says about its precision. */
export interface Estimate {
  readonly facts: ParameterFacts;
  readonly value: number;
  /** null where the trial cannot say, as at an edge. */
  readonly standardError: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

/** A curve fitted in scaled units, and what follows from it in the units of the trial. */
export class Fitting {
  readonly parameters: CurveParameters;
  readonly highestRate: number;
  private readonly covariance: readonly (readonly number[])[];
  private readonly missed: number;
  private readonly degreesOfFreedom: number;
  private readonly t: number;

  constructor(
    private readonly model: ResponseModel,
    private readonly pairs: ResponsePairs,
    { scaled, parameters, covariance, yieldScale }: ScaledFit,
    confidencePct: number,
  ) {
    this.highestRate = pairs.rates.at(-1) ?? NaN;
    const factors = model.parameters.map(({ bushels, units }) => yieldScale ** bushels * this.highestRate ** units);
    const factor = (index: number) => factors[index] ?? NaN;
    const missed = missedSquares(model, parameters, scaled);
    this.missed = missed * yieldScale ** 2;
    this.degreesOfFreedom = pairs.rates.length - model.parameters.length;
    const variance = missed / this.degreesOfFreedom;
    this.parameters = parameters.map((value, index) => value * factor(index));
    this.covariance = covariance.map((row, i) => row.map((cell, j) => cell * variance * factor(i) * factor(j)));
    this.t = tForConfidence(confidencePct, this.degreesOfFreedom);
  }

  estimate(facts: ParameterFacts, of: (parameters: CurveParameters) => number): Estimate {
    const value = of(this.parameters);
    const standardError = Math.sqrt(Math.max(0, this.varianceOf(of)));
    return {
      facts,
      value,
      standardError,
      low: value - this.t * standardError,
      high: value + this.t * standardError,
    };
  }

  estimateIfAny(facts: ParameterFacts, of: (parameters: CurveParameters) => number): readonly Estimate[] {
    return Number.isFinite(of(this.parameters)) ? [this.estimate(facts, of)] : [];
  }

  summary() {
    const { yieldsBuPerAc, rates, leftOut } = this.pairs;
    const meanBuPerAc = mean(yieldsBuPerAc);
    const total = sumOfSquares(yieldsBuPerAc.map((one) => one - meanBuPerAc));
    return {
      r2: 1 - this.missed / total,
      residualSdBuPerAc: Math.sqrt(this.missed / this.degreesOfFreedom),
      missedSquares: this.missed,
      pairs: rates.length,
      leftOut,
      degreesOfFreedom: this.degreesOfFreedom,
      aicc: aiccOf(this.missed, total, rates.length, this.model.parameters.length + 1),
      lowestRate: rates[0] ?? NaN,
      highestRate: this.highestRate,
    };
  }

  /** Delta method: gᵀVg, with g by central differences at steps of the parameters' own size. */
  private varianceOf(of: (parameters: CurveParameters) => number): number {
    const gradient = this.parameters.map((value, index) => {
      const step = 1e-6 * (Math.abs(value) || 1e-6);
      const at = (shift: number) => of(this.parameters.map((one, other) => (other === index ? one + shift : one)));
      return (at(step) - at(-step)) / (2 * step);
    });
    return this.covariance.reduce(
      (sum, row, i) =>
        sum + row.reduce((inner, cell, j) => inner + cell * (gradient[i] ?? NaN) * (gradient[j] ?? NaN), 0),
      0,
    );
  }
}

function aiccOf(missed: number, total: number, pairs: number, unknowns: number): number | null {
  const left = pairs - unknowns - 1;
  if (left <= 0 || missed <= 1e-20 * total) return null;
  return pairs * Math.log(missed / pairs) + 2 * unknowns + (2 * unknowns * (unknowns + 1)) / left;
}
