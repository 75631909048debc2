/** Differences between evaluations of a map, the oldest first: of the weighted residuals, and of the values. Plain data. */
export interface Secants {
  readonly residuals: readonly Float64Array[];
  readonly values: readonly Float64Array[];
}

/**
 * Anderson acceleration of a fixed-point map x = G(x), in weighted least-squares form.
 *
 *   f_k = G(x_k) - x_k;   min over c of | W (f_k - sum c_j (f_{k-j+1} - f_{k-j})) |_2
 *   x_{k+1} = G(x_k) - sum c_j (G(x_{k-j+1}) - G(x_{k-j})) - (1 - d) (f_k - sum c_j (f_{k-j+1} - f_{k-j}))
 *
 * d is the damping, 1 unless asked otherwise.
 *
 * @param size  - unknowns
 * @param depth - differences kept; 0 is the plain iteration
 *
 * Numerics: modified Gram-Schmidt; a direction that adds less than 1e-8 of its length is dropped. `propose` never
 * judges its proposal: the caller checks it and calls `forget` when it must be refused. Vectors handed in are copied.
 * Source: Walker & Ni, SIAM J. Numer. Anal. 49 (2011) 1715-1735.
 */
export class Anderson {
  private readonly deltaF: Float64Array[] = [];
  private readonly deltaG: Float64Array[] = [];
  private readonly lastF: Float64Array;
  private readonly lastG: Float64Array;
  private seen = false;

  constructor(
    private readonly size: number,
    private readonly depth: number,
  ) {
    this.lastF = new Float64Array(size);
    this.lastG = new Float64Array(size);
  }

  /** What has been learned of the map's slopes, as a copy of its own: it may be sent away while the search goes on. */
  get secants(): Secants {
    const copies = (all: readonly Float64Array[]) => all.map((each) => each.slice());
    return { residuals: copies(this.deltaF), values: copies(this.deltaG) };
  }

  /** Takes over what was learned of a map that is nearly this one. */
  adopt({ residuals, values }: Secants): void {
    this.forget();
    this.deltaF.push(...residuals.slice(-this.depth));
    this.deltaG.push(...values.slice(-this.depth));
  }

  /** Goes on with a map that is nearly the last one: keeps what was learned of its slopes, not where it stood. */
  rebase(): void {
    this.seen = false;
  }

  forget(): void {
    this.deltaF.length = 0;
    this.deltaG.length = 0;
    this.seen = false;
  }

  /**
   * Takes one evaluation of the map and writes the next iterate.
   *
   * @param x       - where the map was evaluated
   * @param gx      - its value there
   * @param weights - weight of every unknown in the norm, > 0
   * @param next    - overwritten with the proposal; may be `x`
   * @param damping - share of the remaining residual that is taken, 0 to 1; less than 1 settles what overshoots
   */
  propose(x: Float64Array, gx: Float64Array, weights: Float64Array, next: Float64Array, damping = 1): void {
    const { size, depth, deltaF, deltaG, lastF, lastG } = this;
    const f = new Float64Array(size);
    for (let i = 0; i < size; i++) f[i] = (gx[i] - x[i]) * weights[i];
    if (this.seen && depth > 0) {
      if (deltaF.length === depth) {
        deltaF.shift();
        deltaG.shift();
      }
      deltaF.push(f.map((value, i) => value - lastF[i]));
      deltaG.push(gx.map((value, i) => value - lastG[i]));
    }
    lastF.set(f);
    lastG.set(gx);
    this.seen = true;

    const coefficients = leastSquares(deltaF, f);
    next.set(gx);
    coefficients.forEach((c, j) => {
      if (c === 0) return;
      const column = deltaG[j];
      for (let i = 0; i < size; i++) next[i] -= c * column[i];
      if (damping < 1) for (let i = 0; i < size; i++) f[i] -= c * deltaF[j][i];
    });
    if (damping < 1)
      for (let i = 0; i < size; i++) if (weights[i] > 0) next[i] -= ((1 - damping) * f[i]) / weights[i];
  }
}

/** min | b - sum c_j columns_j |_2 by modified Gram-Schmidt, newest column first; dropped columns get 0. */
function leastSquares(columns: readonly Float64Array[], b: Float64Array): number[] {
  const n = columns.length;
  const coefficients = new Array<number>(n).fill(0);
  const kept: { column: number; q: Float64Array; r: number[] }[] = [];
  const rest = b.slice();
  const projections: number[] = [];
  for (let j = n - 1; j >= 0; j--) {
    const q = columns[j].slice();
    const before = norm(q);
    const r = kept.map(({ q: earlier }) => {
      const along = dot(earlier, q);
      for (let i = 0; i < q.length; i++) q[i] -= along * earlier[i];
      return along;
    });
    const length = norm(q);
    if (!(length > 1e-8 * before)) continue;
    for (let i = 0; i < q.length; i++) q[i] /= length;
    const along = dot(q, rest);
    for (let i = 0; i < q.length; i++) rest[i] -= along * q[i];
    kept.push({ column: j, q, r: [...r, length] });
    projections.push(along);
  }
  for (let k = kept.length - 1; k >= 0; k--) {
    let value = projections[k];
    for (let later = k + 1; later < kept.length; later++)
      value -= kept[later].r[k] * coefficients[kept[later].column];
    coefficients[kept[k].column] = value / kept[k].r[k];
  }
  return coefficients;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

const norm = (a: Float64Array): number => Math.sqrt(dot(a, a));
