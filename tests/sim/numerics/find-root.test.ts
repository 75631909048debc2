import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../../src/sim/numerics/find-root.ts';

describe('findRoot', () => {
  it('finds the fixed point of the cosine, 0.739085133215160642, to 1e-15', () => {
    // Known constant (OEIS A003957).
    expect(Math.abs(findRoot((x) => Math.cos(x) - x, 0, 1) - 0.7390851332151606)).toBeLessThan(1e-15);
  });

  it('needs no more than 12 evaluations on a smooth function where bisection needs 47', () => {
    let count = 0;
    findRoot((x) => (count++, Math.exp(x) - 2), 0, 1);
    expect(count).toBeLessThanOrEqual(12);
  });

  it('closes in on a triple root and on a jump within the tolerance', () => {
    expect(Math.abs(findRoot((x) => (x - 0.3) ** 3, -1, 2, 1e-10) - 0.3)).toBeLessThan(1e-5);
    expect(Math.abs(findRoot((x) => (x < 0.7 ? -1 : 1), 0, 1, 1e-12) - 0.7)).toBeLessThan(1e-12);
  });

  it('returns an end at which the function is zero, and takes the ends in either order', () => {
    expect(findRoot((x) => x - 2, 2, 5)).toBe(2);
    expect(findRoot((x) => x - 2, 1, 2)).toBe(2);
    expect(findRoot((x) => x - 2, 5, 1)).toBeCloseTo(2, 13);
  });

  it('throws where the ends do not bracket a root, and where the function is not a number', () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError);
    expect(() => findRoot((x) => Math.sqrt(x), -1, 1)).toThrow(RangeError);
    expect(() => findRoot((x) => (Math.abs(x) < 0.9 ? NaN : x), -1, 1)).toThrow(RangeError);
  });

  it('finds the root of any rising cubic anywhere in its bracket to 1e-12', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 10, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (root, steepness) => {
          const f = (x: number): number => steepness * (x - root) + (x - root) ** 3;
          expect(Math.abs(findRoot(f, -11, 12) - root)).toBeLessThan(1e-12);
        },
      ),
    );
  });
});
