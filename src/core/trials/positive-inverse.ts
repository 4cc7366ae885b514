/**
 * Inverse of a symmetric matrix that weighs every direction (positive definite), by Gauss–Jordan elimination.
 * Undefined where a pivot vanishes: some combination cannot be told from the data.
 */
export function positiveInverse(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const size = matrix.length;
  const largest = Math.max(...matrix.map((row, index) => row[index] ?? 0));
  const work = matrix.map((row, index) => [...row, ...row.map((_, column) => (column === index ? 1 : 0))]);
  for (let pivot = 0; pivot < size; pivot++) {
    const pivotRow = work[pivot] ?? [];
    const pivotValue = pivotRow[pivot] ?? 0;
    if (!(pivotValue > largest * 1e-10)) return undefined;
    for (let column = 0; column < pivotRow.length; column++) pivotRow[column] = (pivotRow[column] ?? 0) / pivotValue;
    for (const row of work) {
      const factor = row[pivot] ?? 0;
      if (row === pivotRow || factor === 0) continue;
      for (let column = 0; column < row.length; column++) {
        row[column] = (row[column] ?? 0) - factor * (pivotRow[column] ?? 0);
      }
    }
  }
  return work.map((row) => row.slice(size));
}
