/** The numbers of a curve, in the order the model names them. */
export type CurveParameters = readonly number[];

/** One number of a curve. Its unit is bushels to the first power times units of input to the second. */
export interface ParameterFacts {
  readonly label: string;
  readonly bushels: number;
  readonly units: number;
}

/** A number that follows from the parameters; NaN where the curve has none. */
export interface DerivedFacts extends ParameterFacts {
  readonly of: (parameters: CurveParameters) => number;
}

/**
 * How a curve with one bend is looked for: for each place of the bend the yield is a straight line on a term, so
 * that only the place is searched.
 */
export interface BendSearch {
  /** Where the search starts and ends, from the distinct rates of the trial in rising order. */
  range(rates: readonly number[]): { readonly low: number; readonly high: number };
  /** Steps of equal ratio instead of equal difference. */
  readonly isLogarithmic: boolean;
  readonly passesZero: boolean;
  term(bend: number, rate: number): number;
  parameters(intercept: number, slope: number, bend: number): CurveParameters;
  /** What it means that the best bend is the last looked at: nothing bends within the trial. */
  readonly atLow: string;
  readonly atHigh: string;
}

/** A way yield answers to an input. */
export interface ResponseModel {
  readonly label: string;
  readonly also: readonly string[];
  readonly equation: string;
  readonly parameters: readonly ParameterFacts[];
  readonly derived: readonly DerivedFacts[];
  /** null: the yield is a sum of parameters times terms, and least squares has one answer. */
  readonly bend: BendSearch | null;
  /** What makes parameters bend the right way, as a sentence for those that do not. */
  readonly bendsWhen: string;
  yieldAt(parameters: CurveParameters, rate: number): number;
  /** Change of the yield with each parameter. */
  gradientAt(parameters: CurveParameters, rate: number): readonly number[];
  /**
   * The rate, 0 or more, that leaves most when a unit of input costs so many bushels. Infinity where every further
   * unit still pays; NaN for parameters that bend the wrong way.
   */
  bestRate(parameters: CurveParameters, priceRatio: number): number;
}
