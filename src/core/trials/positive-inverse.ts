/**
 * Inverse of a symmetric matrix that weighs every direction (positive definite), by Gauss–Jordan elimination in place.
 * Undefined where a pivot vanishes: some combination cannot be told from the data.
 */
export function positiveInverse(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const largest = Math.max(...matrix.map((row, index) => row[index] ?? 0));
  const work = matrix.map((row) => Float64Array.from(row));
  for (const [pivot, pivotRow] of work.entries()) {
    const pivotValue = pivotRow[pivot] ?? 0;
    if (!(pivotValue > largest * 1e-10)) return undefined;
    pivotRow[pivot] = 1;
    for (const [column, cell] of pivotRow.entries()) pivotRow[column] = cell / pivotValue;
    for (const row of work) if (row !== pivotRow) clear(row, pivot, pivotRow);
  }
  return work.map((row) => [...row]);
}

/** Takes so much of the pivot's row off another that its cell in the pivot's column goes; the inverse takes its place. */
function clear(row: Float64Array, pivot: number, pivotRow: Float64Array): void {
  const factor = row[pivot] ?? 0;
  if (factor === 0) return;
  row[pivot] = 0;
  for (let column = 0; column < row.length; column++) {
    row[column] = (row[column] ?? 0) - factor * (pivotRow[column] ?? 0);
  }
}
