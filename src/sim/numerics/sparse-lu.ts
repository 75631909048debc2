/**
 * Factors A = L U without pivoting, for a matrix whose pattern is symmetric, fixed and sparse.
 *
 * The pattern is analysed once: a minimum-degree order (ties to the lower index, so the order is reproducible) and
 * the fill it causes. Factor and solve then touch only entries that can be non-zero. A star of n leaves round one
 * hub costs O(n) instead of O(n^3).
 *
 * Numerics: no pivoting, so it suits matrices I - h J of dissipative systems, whose diagonal dominates. A zero pivot
 * gives non-finite results, which the caller must look for.
 * Source: Duff, Erisman & Reid, Direct Methods for Sparse Matrices, 1986, ch. 7 (minimum degree).
 */
export class SparseLu {
  /** Entries in elimination order, row-major, n x n. Write through `index` only. */
  readonly values: Float64Array;
  private readonly order: Int32Array;
  private readonly position: Int32Array;
  /** For pivot k: later positions joined to it, in `later[start[k] .. start[k + 1])`. */
  private readonly later: Int32Array;
  private readonly start: Int32Array;
  private readonly work: Float64Array;

  /**
   * @param size  - rows and columns
   * @param pairs - index pairs (i, j), i != j, whose entries (i, j) and (j, i) may be non-zero
   */
  constructor(
    readonly size: number,
    pairs: readonly (readonly [number, number])[],
  ) {
    const neighbours = Array.from({ length: size }, () => new Set<number>());
    for (const [i, j] of pairs) {
      if (i === j) continue;
      neighbours[i].add(j);
      neighbours[j].add(i);
    }
    this.order = new Int32Array(size);
    this.position = new Int32Array(size).fill(-1);
    const joined: number[][] = [];
    for (let k = 0; k < size; k++) {
      let pick = -1;
      for (let i = 0; i < size; i++) {
        if (this.position[i] < 0 && (pick < 0 || neighbours[i].size < neighbours[pick].size)) pick = i;
      }
      this.order[k] = pick;
      this.position[pick] = k;
      const around = [...neighbours[pick]];
      joined.push(around);
      for (const i of around) {
        neighbours[i].delete(pick);
        for (const j of around) if (j !== i) neighbours[i].add(j);
      }
    }
    this.start = new Int32Array(size + 1);
    const later: number[] = [];
    joined.forEach((around, k) => {
      later.push(...around.map((i) => this.position[i]).sort((a, b) => a - b));
      this.start[k + 1] = later.length;
    });
    this.later = Int32Array.from(later);
    this.values = new Float64Array(size * size);
    this.work = new Float64Array(size);
  }

  /** Where entry (i, j) of the original matrix stands in `values`. */
  index(i: number, j: number): number {
    return this.position[i] * this.size + this.position[j];
  }

  /** Non-zero entries below the diagonal of L: the measure of fill. */
  get fill(): number {
    return this.later.length;
  }

  setIdentity(): void {
    const { values, size } = this;
    values.fill(0);
    for (let i = 0; i < size; i++) values[i * size + i] = 1;
  }

  /** Factors `values` in place. */
  factor(): void {
    const { values, size, later, start } = this;
    for (let k = 0; k < size; k++) {
      const first = start[k];
      const end = start[k + 1];
      const inverse = 1 / values[k * size + k];
      for (let r = first; r < end; r++) {
        const row = later[r] * size;
        const multiplier = values[row + k] * inverse;
        values[row + k] = multiplier;
        if (multiplier === 0) continue;
        for (let c = first; c < end; c++) values[row + later[c]] -= multiplier * values[k * size + later[c]];
      }
    }
  }

  /** Overwrites b with the solution of A x = b; call `factor` first. */
  solve(b: Float64Array): void {
    const { values, size, later, start, order, work } = this;
    for (let k = 0; k < size; k++) work[k] = b[order[k]];
    for (let k = 0; k < size; k++) {
      const x = work[k];
      if (x === 0) continue;
      for (let r = start[k]; r < start[k + 1]; r++) work[later[r]] -= values[later[r] * size + k] * x;
    }
    for (let k = size - 1; k >= 0; k--) {
      let x = work[k];
      for (let c = start[k]; c < start[k + 1]; c++) x -= values[k * size + later[c]] * work[later[c]];
      x /= values[k * size + k];
      work[k] = x;
      b[order[k]] = x;
    }
  }
}
