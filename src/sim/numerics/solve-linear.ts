/**
 * Solves A x = b by Gaussian elimination with partial pivoting.
 *
 * @param A - n rows of n; overwritten
 * @param b - n; overwritten with x
 * @returns b. NaN or infinite where A is singular: for small systems that cannot be.
 */
export function solveLinear(A: Float64Array[], b: Float64Array): Float64Array {
  const n = b.length;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(A[i][k]) > Math.abs(A[pivot][k])) pivot = i;
    [A[k], A[pivot]] = [A[pivot], A[k]];
    [b[k], b[pivot]] = [b[pivot], b[k]];
    for (let i = k + 1; i < n; i++) {
      const share = A[i][k] / A[k][k];
      if (share === 0) continue;
      for (let j = k; j < n; j++) A[i][j] -= share * A[k][j];
      b[i] -= share * b[k];
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let j = k + 1; j < n; j++) b[k] -= A[k][j] * b[j];
    b[k] /= A[k][k];
  }
  return b;
}
