/**
 * Lower Cholesky factor of a symmetric positive definite matrix, row-major.
 *
 * @param matrix  n * n numbers; only the lower triangle is read
 * @returns lower factor L with matrix = L Lᵀ
 * @throws RangeError where the matrix is not positive definite
 */
export function cholesky(matrix: Float64Array, n: number): Float64Array {
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!;
      if (i === j) {
        if (!(sum > 0)) throw new RangeError(`cholesky: row ${i + 1} of the matrix is not positive definite`);
        lower[i * n + i] = Math.sqrt(sum);
      } else {
        lower[i * n + j] = sum / lower[j * n + j]!;
      }
    }
  }
  return lower;
}
