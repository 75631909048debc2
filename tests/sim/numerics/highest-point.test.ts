import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { highestPoint } from '../../../src/sim/numerics/highest-point.ts';

describe('highestPoint', () => {
  it('finds the vertex of any parabola, however unevenly it is sampled', () => {
    const part = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, part, (before, after, bend) => {
        const vertex = 0.3 * (after - before);
        const x = [-before, 0, after];
        const y = x.map((each) => 5 - bend * (each - vertex) ** 2);
        const found = highestPoint(x, y);
        if (y[1] >= y[0] && y[1] >= y[2]) {
          expect(found.x).toBeCloseTo(vertex, 9);
          expect(found.y).toBeCloseTo(5, 9);
        }
        expect(found.y).toBeGreaterThanOrEqual(Math.max(...y));
      }),
      { seed: 7 },
    );
  });

  it('is a hundred times nearer to the top of a cosine than its samples', () => {
    const x = Array.from({ length: 40 }, (_, i) => 0.05 * i - 0.97);
    const y = x.map(Math.cos);
    const { x: at, y: top } = highestPoint(x, y);
    expect(Math.abs(at)).toBeLessThan(2e-4);
    expect(1 - top).toBeLessThan((1 - Math.max(...y)) / 100);
  });

  it('takes the sample at either end, and on a plateau', () => {
    expect(highestPoint([0, 1, 2], [3, 2, 1])).toEqual({ x: 0, y: 3 });
    expect(highestPoint([0, 1, 2], [1, 2, 3])).toEqual({ x: 2, y: 3 });
    expect(highestPoint([0, 1, 2, 3], [1, 1, 1, 1])).toEqual({ x: 0, y: 1 });
  });
});
