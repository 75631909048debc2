import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastWithin, ontoGrid, sumOfSquares } from '../../../src/sim/numerics/bounded-least-squares.ts';
import type { Quadratic } from '../../../src/sim/numerics/bounded-least-squares.ts';

const numbers = (...values: number[]) => Float64Array.from(values);

function gradient({ size, G, c }: Quadratic, x: Float64Array): number[] {
  return Array.from({ length: size }, (_, i) =>
    x.reduce((sum, each, j) => sum + G[i * size + j]! * each, -c[i]!),
  );
}

const value = (quadratic: Quadratic, x: Float64Array): number =>
  x.reduce((sum, each, i) => sum + 0.5 * each * (gradient(quadratic, x)[i]! - quadratic.c[i]!), 0);

const tenths = (min: number, max: number) =>
  fc.integer({ min: 10 * min, max: 10 * max }).map((each) => each / 10);
const entry = tenths(-3, 3);
/** Residuals of four unknowns, and bounds round 0. */
const problem = fc.record({
  rows: fc.array(fc.array(entry, { minLength: 5, maxLength: 5 }), { minLength: 1, maxLength: 6 }),
  low: fc.array(tenths(-1, 0), { minLength: 4, maxLength: 4 }),
  high: fc.array(tenths(0, 1), { minLength: 4, maxLength: 4 }),
});
const PRICE = 0.05;
const posed = ({ rows }: { rows: number[][] }) =>
  sumOfSquares(
    rows.map((row) => numbers(...row)),
    new Float64Array(4).fill(PRICE),
  );

describe('sumOfSquares', () => {
  it('writes (x + 2 y - 3)² / 2 and a price of 1 on each out as a quadratic', () => {
    const { G, c } = sumOfSquares([numbers(1, 2, 3)], numbers(1, 1));
    expect([...G]).toEqual([2, 2, 2, 5]);
    expect([...c]).toEqual([3, 6]);
  });
});

describe('leastWithin', () => {
  it('finds the least of (x - 3)² + (y - 1)² within 0 … 2 at (2, 1)', () => {
    const quadratic = { size: 2, G: numbers(2, 0, 0, 2), c: numbers(6, 2) };
    const [x, y] = leastWithin(quadratic, numbers(0, 0), numbers(2, 2));
    expect(x).toBe(2);
    expect(y).toBeCloseTo(1, 14);
  });

  it('ends where the gradient is nothing, or presses against a bound: 300 random problems', () => {
    fc.assert(
      fc.property(problem, ({ rows, low, high }) => {
        const quadratic = posed({ rows });
        const x = leastWithin(quadratic, numbers(...low), numbers(...high));
        const slope = gradient(quadratic, x);
        const scale = 1e-7 * (1 + Math.max(...quadratic.c.map(Math.abs)));
        x.forEach((each, i) => {
          expect(each).toBeGreaterThanOrEqual(low[i]!);
          expect(each).toBeLessThanOrEqual(high[i]!);
          if (each < high[i]!) expect(slope[i]!).toBeGreaterThan(-scale);
          if (each > low[i]!) expect(slope[i]!).toBeLessThan(scale);
        });
      }),
      { seed: 8, numRuns: 300 },
    );
  });
});

describe('ontoGrid', () => {
  it('leaves no single step that leads lower, within the bounds: 200 random problems', () => {
    fc.assert(
      fc.property(problem, ({ rows, low, high }) => {
        const quadratic = posed({ rows });
        const [least, most, steps] = [numbers(...low), numbers(...high), new Float64Array(4).fill(0.25)];
        const x = ontoGrid(quadratic, leastWithin(quadratic, least, most), steps, least, most);
        const here = value(quadratic, x);
        x.forEach((each, i) => {
          expect(Math.abs(each / 0.25 - Math.round(each / 0.25))).toBeLessThan(1e-9);
          expect(each).toBeGreaterThan(low[i]! - 1e-9);
          expect(each).toBeLessThan(high[i]! + 1e-9);
          for (const by of [-0.25, 0.25]) {
            const moved = x.map((other, j) => (j === i ? other + by : other));
            if (moved[i]! < low[i]! || moved[i]! > high[i]!) continue;
            expect(value(quadratic, moved)).toBeGreaterThan(here - 1e-9 * (1 + Math.abs(here)));
          }
        });
      }),
      { seed: 8, numRuns: 200 },
    );
  });
});
