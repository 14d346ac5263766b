/**
 * Solves A x = b for a symmetric matrix that is positive definite, by Cholesky's factors.
 *
 * @returns undefined where the matrix is not positive definite to the digits that numbers have
 */
export function solveSymmetric(matrix: readonly ArrayLike<number>[], right: ArrayLike<number>): number[] | undefined {
  const size = matrix.length;
  const lower = matrix.map((row) => Float64Array.from(row));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
      if (i !== j) lower[i]![j] = sum / lower[j]![j]!;
      else if (sum > 1e-13 * Math.abs(matrix[i]![i]!)) lower[i]![i] = Math.sqrt(sum);
      else return undefined;
    }
  }
  const solved = Array.from(right);
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) solved[i]! -= lower[i]![k]! * solved[k]!;
    solved[i]! /= lower[i]![i]!;
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) solved[i]! -= lower[k]![i]! * solved[k]!;
    solved[i]! /= lower[i]![i]!;
  }
  return solved;
}
