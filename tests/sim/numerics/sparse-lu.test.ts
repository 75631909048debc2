import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SparseLu } from '../../../src/sim/numerics/sparse-lu.ts';

type Pair = readonly [number, number];

/** Gaussian elimination with partial pivoting on a full matrix. */
function solveDense(matrix: readonly (readonly number[])[], b: readonly number[]): number[] {
  const n = b.length;
  const rows = matrix.map((row, i) => [...row, b[i]]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i][k]) > Math.abs(rows[pivot][k])) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot], rows[k]];
    for (let i = k + 1; i < n; i++) {
      const factor = rows[i][k] / rows[k][k];
      for (let j = k; j <= n; j++) rows[i][j] -= factor * rows[k][j];
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let k = n - 1; k >= 0; k--) {
    let sum = rows[k][n];
    for (let j = k + 1; j < n; j++) sum -= rows[k][j] * x[j];
    x[k] = sum / rows[k][k];
  }
  return x;
}

const star = (leaves: number): Pair[] => Array.from({ length: leaves }, (_, i): Pair => [0, i + 1]);
const ring = (n: number): Pair[] => Array.from({ length: n }, (_, i): Pair => [i, (i + 1) % n]);
/** Hub with arms of `length` nodes whose ends meet in a second hub: plenum, passages, cylinders, collector. */
const radial = (arms: number, length: number): { size: number; pairs: Pair[] } => {
  const size = arms * length + 2;
  const pairs: Pair[] = [];
  for (let a = 0; a < arms; a++) {
    const first = 2 + a * length;
    pairs.push([0, first], [first + length - 1, 1]);
    for (let k = 1; k < length; k++) pairs.push([first + k - 1, first + k]);
  }
  return { size, pairs };
};

/** Largest difference from the dense solution over the largest entry of it. */
function departure(size: number, pairs: readonly Pair[], entries: readonly number[]): number {
  let next = 0;
  const entry = () => entries[next++ % entries.length];
  const dense = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (const [i, j] of pairs) {
    if (i === j) continue;
    dense[i][j] = entry();
    dense[j][i] = entry();
  }
  // Rows that dominate their diagonal, as I - h J of a dissipative network.
  dense.forEach((row, i) => (row[i] = 1 + row.reduce((sum, value) => sum + Math.abs(value), 0)));
  const b = Array.from({ length: size }, entry);

  const lu = new SparseLu(size, pairs);
  lu.setIdentity();
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) if (dense[i][j] !== 0) lu.values[lu.index(i, j)] = dense[i][j];
  lu.factor();
  const x = Float64Array.from(b);
  lu.solve(x);
  const exact = solveDense(dense, b);
  const scale = Math.max(...exact.map(Math.abs), 1e-300);
  return Math.max(...exact.map((value, i) => Math.abs(value - x[i]))) / scale;
}

const entries = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 7, maxLength: 40 });

describe('SparseLu', () => {
  it('agrees to 1e-12 with dense elimination on stars and rings of 2 to 30 nodes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 30 }), fc.boolean(), entries, (n, isStar, values) => {
        expect(departure(n, isStar ? star(n - 1) : ring(n), values)).toBeLessThan(1e-12);
      }),
      { numRuns: 100, seed: 1 },
    );
  });

  it('agrees to 1e-12 with dense elimination on random patterns, repeated and reversed pairs included', () => {
    const node = fc.integer({ min: 0, max: 11 });
    fc.assert(
      fc.property(fc.array(fc.tuple(node, node), { maxLength: 60 }), entries, (pairs, values) => {
        expect(departure(12, pairs, values)).toBeLessThan(1e-12);
      }),
      { numRuns: 100, seed: 2 },
    );
  });

  it('fills nothing on a star: one entry a leaf below the diagonal, whichever node is the hub', () => {
    expect(new SparseLu(31, star(30)).fill).toBe(30);
    const hubLast = star(30).map(([, leaf]): Pair => [30, leaf - 1]);
    expect(new SparseLu(31, hubLast).fill).toBe(30);
  });

  it('fills a ring of n with n - 3 entries, 2 n - 3 in all', () => {
    for (const n of [3, 5, 12, 40]) expect(new SparseLu(n, ring(n)).fill).toBe(2 * n - 3);
  });

  it('fills no more than one entry a node of an engine with fourteen arms between two hubs', () => {
    const { size, pairs } = radial(14, 2);
    // Each arm of two nodes, shut from the inside, leaves at most one new entry; the hubs meet once.
    expect(new SparseLu(size, pairs).fill).toBeLessThanOrEqual(pairs.length + 14 + 1);
  });

  it('solves for several right sides after one factoring, and factors anew after setIdentity', () => {
    const lu = new SparseLu(3, [
      [0, 1],
      [1, 2],
    ]);
    for (const [diagonal, beside] of [
      [4, -1],
      [10, 3],
    ]) {
      lu.setIdentity();
      for (let i = 0; i < 3; i++) lu.values[lu.index(i, i)] = diagonal;
      for (const [i, j] of [
        [0, 1],
        [1, 0],
        [1, 2],
        [2, 1],
      ])
        lu.values[lu.index(i, j)] = beside;
      lu.factor();
      for (const wanted of [
        [1, 2, 3],
        [-5, 0, 7],
      ]) {
        const [x, y, z] = wanted;
        const b = Float64Array.of(
          diagonal * x + beside * y,
          beside * x + diagonal * y + beside * z,
          beside * y + diagonal * z,
        );
        lu.solve(b);
        b.forEach((value, i) => expect(value).toBeCloseTo(wanted[i], 13));
      }
    }
  });

  it('shows a singular matrix by a result that is not finite', () => {
    const lu = new SparseLu(2, [[0, 1]]);
    lu.values.fill(1);
    lu.factor();
    const b = Float64Array.of(1, 2);
    lu.solve(b);
    expect([...b].some(Number.isFinite)).toBe(false);
  });
});
