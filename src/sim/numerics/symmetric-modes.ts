/** Eigenvalues of a symmetric matrix with their vectors, `vectors[i]` to `values[i]`. */
export interface Modes {
  readonly values: Float64Array;
  readonly vectors: readonly Float64Array[];
}

/** Sweeps until nothing off the diagonal is left; ten are enough for any matrix of ten rows. */
const MOST_SWEEPS = 50;

/**
 * Eigenvalues and orthonormal eigenvectors of a small symmetric matrix by Jacobi's rotations.
 *
 * @param A - n rows of n, symmetric; overwritten
 *
 * Numerics: off-diagonal elements to 1e-15 of the diagonal's norm.
 * Source: Golub & Van Loan, Matrix Computations, 1996, sec. 8.4.
 */
export function symmetricModes(A: Float64Array[]): Modes {
  const n = A.length;
  const V = A.map((_, i) => Float64Array.from({ length: n }, (__, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let off = 0;
    let whole = 0;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        whole += A[i][j] ** 2;
        if (i !== j) off += A[i][j] ** 2;
      }
    }
    if (off <= 1e-30 * whole) break;
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) {
        if (A[p][q] === 0) continue;
        const tau = (A[q][q] - A[p][p]) / (2 * A[p][q]);
        const t = Math.sign(tau || 1) / (Math.abs(tau) + Math.hypot(1, tau));
        const c = 1 / Math.hypot(1, t);
        rotate(A, V, p, q, c, t * c);
      }
    }
  }
  return {
    values: Float64Array.from({ length: n }, (_, i) => A[i][i]),
    vectors: A.map((_, i) => Float64Array.from(V, (row) => row[i])),
  };
}

/** A <- J' A J, V <- V J for the rotation that takes p and q by c and s. */
function rotate(A: Float64Array[], V: Float64Array[], p: number, q: number, c: number, s: number): void {
  const n = A.length;
  for (let k = 0; k < n; k++) {
    const [a, b] = [A[k][p], A[k][q]];
    A[k][p] = c * a - s * b;
    A[k][q] = s * a + c * b;
  }
  for (let k = 0; k < n; k++) {
    const [a, b] = [A[p][k], A[q][k]];
    A[p][k] = c * a - s * b;
    A[q][k] = s * a + c * b;
    const [v, w] = [V[k][p], V[k][q]];
    V[k][p] = c * v - s * w;
    V[k][q] = s * v + c * w;
  }
}
