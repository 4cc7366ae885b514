import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { Matrix, QrDecomposition } from "ml-matrix";
import type { CurveParameters, ResponseModel } from "./response-model";

/** Rates and yields brought near 1, as the solvers want them. */
export interface ScaledPairs {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** Columns of the Jacobian nearer to one another than this cannot be told apart in doubles. */
const leastIndependence = 1e-9;

/** Sum of squared differences between the yields and a curve. */
export function missedSquares(model: ResponseModel, parameters: CurveParameters, { x, y }: ScaledPairs): number {
  return x.reduce((sum, rate, index) => sum + ((y[index] ?? NaN) - model.yieldAt(parameters, rate)) ** 2, 0);
}

/** The best parameters of a model that is a sum of parameters times terms, by QR. Null where terms coincide. */
export function linearFit(model: ResponseModel, pairs: ScaledPairs): CurveParameters | null {
  const { terms, lengths } = termsOf(model, [], pairs.x);
  const qr = new QrDecomposition(terms);
  if (!isIndependent(qr)) return null;
  const solved = qr.solve(Matrix.columnVector([...pairs.y]));
  return lengths.map((length, column) => solved.get(column, 0) / length);
}

/** Takes parameters near the best to the best, by Levenberg and Marquardt; never to worse ones. */
export function polish(model: ResponseModel, start: CurveParameters, { x, y }: ScaledPairs): CurveParameters {
  let best = start;
  let least = missedSquares(model, start, { x, y });
  for (let round = 0; round < 10 && least > 0; round++) {
    const { parameterValues } = levenbergMarquardt({ x: [...x], y: [...y] }, (p) => (rate) => model.yieldAt(p, rate), {
      initialValues: best,
      jacobianFunction: (p) => (rate) => [...model.gradientAt(p, rate)],
      damping: 1e-6,
      errorTolerance: 0,
      maxIterations: 4,
    });
    const missed = missedSquares(model, parameterValues, { x, y });
    const gained = least - missed;
    if (!(gained > 0)) break;
    best = parameterValues;
    least = missed;
    if (gained < 1e-15 * least) break;
  }
  return best;
}

/**
 * Covariance of the parameters for a residual variance of 1: the inverse of JᵀJ by the QR of J. Null where the data
 * cannot tell the parameters apart.
 */
export function unitCovariance(
  model: ResponseModel,
  parameters: CurveParameters,
  { x }: ScaledPairs,
): readonly (readonly number[])[] | null {
  const { terms, lengths } = termsOf(model, parameters, x);
  const qr = new QrDecomposition(terms);
  if (!isIndependent(qr)) return null;
  const inverse = new QrDecomposition(qr.upperTriangularMatrix).solve(Matrix.eye(lengths.length));
  const covariance = inverse.mmul(inverse.transpose());
  return lengths.map((down, row) => lengths.map((across, column) => covariance.get(row, column) / (down * across)));
}

/** The Jacobian with every column brought to length 1. */
function termsOf(model: ResponseModel, parameters: CurveParameters, x: readonly number[]) {
  const rows = x.map((rate) => model.gradientAt(parameters, rate));
  const lengths = model.parameters.map((_, column) => Math.hypot(...rows.map((row) => row[column] ?? NaN)));
  return { terms: new Matrix(rows.map((row) => row.map((cell, column) => cell / (lengths[column] ?? NaN)))), lengths };
}

function isIndependent(qr: QrDecomposition): boolean {
  const pivots = qr.upperTriangularMatrix.diagonal().map(Math.abs);
  return pivots.every((pivot) => pivot > leastIndependence);
}
