import { describe, expect, it } from 'vitest';
import { Anderson } from '../../../src/sim/numerics/anderson.ts';

/** x -> A x + b with a full, unsymmetric matrix whose norm is below 1. */
function linearMap(n: number) {
  const entry = (i: number, j: number) => (0.9 * Math.sin(1 + 3 * i + 7 * j)) / n;
  const fixed = Float64Array.from({ length: n }, (_, i) => Math.cos(2 * i) + 2);
  const apply = (x: Float64Array): Float64Array =>
    fixed.map((value, i) => {
      let sum = value;
      for (let j = 0; j < n; j++) sum += entry(i, j) * (x[j] - fixed[j]);
      return sum;
    });
  return { fixed, apply };
}

const distance = (a: Float64Array, b: Float64Array): number =>
  Math.max(...a.map((value, i) => Math.abs(value - b[i])));

function iterate(
  apply: (x: Float64Array) => Float64Array,
  n: number,
  depth: number,
  steps: number,
  { weights = new Float64Array(n).fill(1), damping = 1 } = {},
): Float64Array {
  const anderson = new Anderson(n, depth);
  const x = new Float64Array(n);
  for (let k = 0; k < steps; k++) anderson.propose(x, apply(x), weights, x, damping);
  return x;
}

describe('Anderson', () => {
  it('reaches the fixed point of a linear map in n dimensions to round-off in n + 1 steps', () => {
    for (const n of [1, 2, 3, 5]) {
      const { fixed, apply } = linearMap(n);
      expect(distance(iterate(apply, n, n, n + 1), fixed)).toBeLessThan(1e-10);
    }
  });

  it('is far from it one step earlier', () => {
    const { fixed, apply } = linearMap(3);
    expect(distance(iterate(apply, 3, 3, 3), fixed)).toBeGreaterThan(1e-6);
  });

  it('finds the fixed point of an expansion, from which the plain iteration runs away', () => {
    const apply = (x: Float64Array) => Float64Array.of(1 - 3 * (x[0] - 1), 2 + 1.5 * (x[1] - 2));
    expect(distance(iterate(apply, 2, 2, 3), Float64Array.of(1, 2))).toBeLessThan(1e-10);
    expect(distance(iterate(apply, 2, 0, 3), Float64Array.of(1, 2))).toBeGreaterThan(5);
  });

  it('is the plain iteration at depth 0, bit by bit', () => {
    const { apply } = linearMap(4);
    let plain = new Float64Array(4);
    for (let k = 0; k < 5; k++) plain = Float64Array.from(apply(plain));
    expect(iterate(apply, 4, 0, 5)).toEqual(plain);
  });

  it('is the plain iteration in its first step, and again after forget', () => {
    const { apply } = linearMap(3);
    const anderson = new Anderson(3, 3);
    const weights = new Float64Array(3).fill(1);
    const x = new Float64Array(3);
    const next = new Float64Array(3);
    anderson.propose(x, apply(x), weights, next);
    expect(next).toEqual(apply(x));
    x.set(next);
    anderson.propose(x, apply(x), weights, next);
    expect(next).not.toEqual(apply(x));
    anderson.forget();
    anderson.propose(x, apply(x), weights, next);
    expect(next).toEqual(apply(x));
  });

  it('takes half the way at damping 0.5 without history', () => {
    const { fixed } = linearMap(2);
    const x = iterate(() => fixed.slice(), 2, 3, 1, { damping: 0.5 });
    expect(
      distance(
        x,
        fixed.map((value) => value / 2),
      ),
    ).toBeLessThan(1e-15);
  });

  it('settles a map that flips between two values, x -> -x + 2, when damped by half', () => {
    const flip = (x: Float64Array) => Float64Array.of(2 - x[0]);
    expect(iterate(flip, 1, 0, 1, { damping: 0.5 })[0]).toBe(1);
    expect(iterate(flip, 1, 0, 20)[0]).toBe(0);
  });

  it('does not break where the map has come to rest or repeats itself', () => {
    const rest = (x: Float64Array) => x.slice();
    expect(iterate(rest, 3, 3, 6)).toEqual(new Float64Array(3));
    const constant = () => Float64Array.of(1, 2);
    expect(iterate(constant, 2, 4, 8)).toEqual(Float64Array.of(1, 2));
  });

  it('converges alike whether unknowns are measured in large or small units', () => {
    const { fixed, apply } = linearMap(3);
    const unit = Float64Array.of(1e-8, 1, 1e6);
    const scaled = (x: Float64Array) =>
      apply(x.map((value, i) => value / unit[i])).map((value, i) => value * unit[i]);
    const weights = unit.map((u) => 1 / u);
    const x = iterate(scaled, 3, 3, 4, { weights });
    expect(
      distance(
        x.map((value, i) => value / unit[i]),
        fixed,
      ),
    ).toBeLessThan(1e-10);
  });

  it('keeps a linear invariant of the map: the sum of what only moves from place to place', () => {
    // Columns sum to 1, so the sum of x never changes; the fixed points form a line.
    const mix = (x: Float64Array) =>
      Float64Array.of(
        0.5 * x[0] + 0.3 * x[1],
        0.4 * x[0] + 0.6 * x[1] + 0.2 * x[2],
        0.1 * (x[0] + x[1]) + 0.8 * x[2],
      );
    const anderson = new Anderson(3, 2);
    const weights = new Float64Array(3).fill(1);
    const x = Float64Array.of(5, 1, 0);
    for (let k = 0; k < 6; k++) anderson.propose(x, mix(x), weights, x);
    expect(x[0] + x[1] + x[2]).toBeCloseTo(6, 12);
    expect(distance(mix(x), x)).toBeLessThan(1e-12);
  });

  it('hands out copies of its secants: sent away, they leave the iteration able to go on', () => {
    const { fixed, apply } = linearMap(6);
    const weights = new Float64Array(6).fill(1);
    const anderson = new Anderson(6, 6);
    const x = new Float64Array(6);
    for (let k = 0; k < 3; k++) anderson.propose(x, apply(x), weights, x, 1);
    const { residuals, values } = anderson.secants;
    structuredClone(null, { transfer: [...residuals, ...values].map((each) => each.buffer as ArrayBuffer) });
    for (let k = 0; k < 9; k++) anderson.propose(x, apply(x), weights, x, 1);
    expect(distance(x, fixed)).toBeLessThan(1e-10);
  });
});
