/**
 * Coefficients of linearly implicit Runge-Kutta methods of the Rosenbrock-W family, in the form that needs no product
 * with the Jacobian:
 *
 *   (I - gamma h J) u_i = gamma h [ f(t + alpha_i h, y + sum_j a_ij u_j) + sum_j (c_ij / h) u_j + d_i h f_t ]
 *   y1  = y + sum_j m_j u_j        error = sum_j e_j u_j
 *
 * A W-method keeps its order for ANY matrix J and any f_t, the part of df/dt that is counted at fixed y: both may leave
 * out whatever is not stiff. With J = 0 and f_t = 0 it is an explicit Runge-Kutta method. Quantities that f and J both conserve are conserved to
 * round-off.
 *
 * Source: Hairer & Wanner, Solving Ordinary Differential Equations II, 1996, sec. IV.7.
 */
export interface RosenbrockW {
  readonly name: string;
  readonly stages: number;
  readonly order: number;
  readonly gamma: number;
  readonly alpha: Float64Array;
  /** Strictly lower triangular, row-major, stages x stages. */
  readonly a: Float64Array;
  readonly c: Float64Array;
  readonly m: Float64Array;
  /** Weight of the stiff time derivative in each stage. */
  readonly d: Float64Array;
  /** Weights of the error estimate. */
  readonly e: Float64Array;
}

/** From the textbook form: k_i = h f(y + sum A_ij k_j) + h J sum G_ij k_j, y1 = y + sum b_i k_i, embedded b2. */
function transformed(
  name: string,
  order: number,
  A: readonly (readonly number[])[],
  G: readonly (readonly number[])[],
  b: readonly number[],
  b2: readonly number[],
): RosenbrockW {
  const s = b.length;
  const inverse = invertLowerTriangular(G);
  const a = new Float64Array(s * s);
  const c = new Float64Array(s * s);
  const m = new Float64Array(s);
  const e = new Float64Array(s);
  const alpha = new Float64Array(s);
  const d = Float64Array.from(G, (row) => row.reduce((sum, g) => sum + g, 0));
  for (let i = 0; i < s; i++) {
    for (let j = 0; j < i; j++) {
      alpha[i] += A[i][j];
      for (let k = j; k < i; k++) a[i * s + j] += A[i][k] * inverse[k][j];
      c[i * s + j] = -inverse[i][j];
    }
    for (let k = i; k < s; k++) {
      m[i] += b[k] * inverse[k][i];
      e[i] += (b[k] - b2[k]) * inverse[k][i];
    }
  }
  return { name, stages: s, order, gamma: G[0][0], alpha, a, c, d, m, e };
}

function invertLowerTriangular(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const inverse = matrix.map((row) => row.map(() => 0));
  for (let j = 0; j < n; j++) {
    inverse[j][j] = 1 / matrix[j][j];
    for (let i = j + 1; i < n; i++) {
      let sum = 0;
      for (let k = j; k < i; k++) sum += (matrix[i][k] ?? 0) * inverse[k][j];
      inverse[i][j] = -sum / matrix[i][i];
    }
  }
  return inverse;
}

const gammaRos2 = 1 - Math.SQRT1_2;

/**
 * Two stages, order 2 for any J, L-stable; embedded order 1.
 * Source: Verwer, Spee, Blom & Hundsdorfer, SIAM J. Sci. Comput. 20 (1999) 1456-1480.
 */
export const ros2: RosenbrockW = transformed(
  'ROS2',
  2,
  [
    [0, 0],
    [1, 0],
  ],
  [
    [gammaRos2, 0],
    [-2 * gammaRos2, gammaRos2],
  ],
  [0.5, 0.5],
  [1, 0],
);

/**
 * Four stages, order 3 for any J, stiffly accurate and L-stable; embedded order 2.
 * Source: Rang & Angermann, BIT Numer. Math. 45 (2005) 761-787, method ROS34PW2.
 */
export const ros34pw2: RosenbrockW = transformed(
  'ROS34PW2',
  3,
  [
    [0, 0, 0, 0],
    [8.7173304301691801e-1, 0, 0, 0],
    [8.4457060015369423e-1, -1.1299064236484185e-1, 0, 0],
    [0, 0, 1, 0],
  ],
  [
    [4.35866521508459e-1, 0, 0, 0],
    [-8.7173304301691801e-1, 4.35866521508459e-1, 0, 0],
    [-9.0338057013044082e-1, 5.4180672388095326e-2, 4.35866521508459e-1, 0],
    [2.4212380706095346e-1, -1.2232505839045147, 5.4526025533510214e-1, 4.35866521508459e-1],
  ],
  [2.4212380706095346e-1, -1.2232505839045147, 1.545260255335102, 4.35866521508459e-1],
  [3.7810903145819369e-1, -9.6042292212423178e-2, 5.0e-1, 2.179332607542295e-1],
);
