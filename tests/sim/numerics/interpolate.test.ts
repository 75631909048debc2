import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MonotoneTable, interpolateLinear, intervalOf } from '../../../src/sim/numerics/interpolate.ts';

const xs = [0, 1, 3, 6];
const ys = [2, 4, 5, -1];

describe('interpolateLinear', () => {
  it('lies on the chord: 4.5 halfway between (1, 4) and (3, 5)', () => {
    expect(interpolateLinear(xs, ys, 2)).toBe(4.5);
  });

  it('meets every entry exactly, the last included', () => {
    xs.forEach((x, i) => expect(interpolateLinear(xs, ys, x)).toBe(ys[i]));
  });

  it('is not a number outside the table or at NaN', () => {
    for (const x of [-1e-9, 6.000001, NaN]) expect(interpolateLinear(xs, ys, x)).toBeNaN();
  });

  it('gives the value of a table with one entry at its place', () => {
    expect(interpolateLinear([3], [7], 3)).toBe(7);
  });
});

describe('intervalOf', () => {
  it('gives the interval that begins at or before the place, the last one at the end', () => {
    expect([0, 0.5, 1, 2.9, 3, 6].map((x) => intervalOf(xs, x))).toEqual([0, 0, 1, 1, 2, 2]);
  });
});

describe('MonotoneTable', () => {
  it('reproduces a straight line and its slope', () => {
    const table = new MonotoneTable([0, 1, 4], [1, 3, 9]);
    for (const x of [0, 0.3, 1, 2.7, 4]) {
      table.evaluate(x);
      expect(table.value).toBeCloseTo(1 + 2 * x, 13);
      expect(table.slope).toBeCloseTo(2, 13);
    }
  });

  it('never overshoots a rising table, however uneven', () => {
    const steps = fc.array(
      fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
      {
        minLength: 2,
        maxLength: 8,
      },
    );
    fc.assert(
      fc.property(steps, (pairs) => {
        let x = 0;
        let y = 0;
        const places = pairs.map(([dx]) => (x += dx));
        const values = pairs.map(([, dy]) => (y += dy));
        const table = new MonotoneTable(places, values);
        let before = values[0]!;
        for (let i = 0; i <= 200; i++) {
          table.evaluate(Math.min(places[0]! + ((places.at(-1)! - places[0]!) * i) / 200, places.at(-1)!));
          expect(table.value).toBeGreaterThanOrEqual(before - 1e-12);
          before = table.value;
        }
        expect(before).toBeLessThanOrEqual(values.at(-1)! + 1e-12);
      }),
      { numRuns: 50 },
    );
  });

  it('writes a slope that is the derivative of the value', () => {
    const table = new MonotoneTable(xs, ys);
    for (const x of [0.4, 1.7, 2.2, 4.9]) {
      table.evaluate(x + 1e-5);
      const above = table.value;
      table.evaluate(x - 1e-5);
      const below = table.value;
      table.evaluate(x);
      expect(table.slope).toBeCloseTo((above - below) / 2e-5, 7);
    }
  });

  it('converges with third order or better on a smooth rising function', () => {
    const error = (n: number): number => {
      const places = Array.from({ length: n + 1 }, (_, i) => i / n);
      const table = new MonotoneTable(places, places.map(Math.exp));
      let worst = 0;
      for (let i = 0; i <= 500; i++) {
        table.evaluate(i / 500);
        worst = Math.max(worst, Math.abs(table.value - Math.exp(i / 500)));
      }
      return worst;
    };
    // Harmonic slopes are second-order accurate inside, so the value is third-order.
    expect(error(16) / error(32)).toBeGreaterThan(6.5);
  });

  it('is not a number outside, and refuses tables that do not rise or do not pair', () => {
    const table = new MonotoneTable(xs, ys);
    table.evaluate(7);
    expect([table.value, table.slope]).toEqual([NaN, NaN]);
    expect(() => new MonotoneTable([0, 1, 1], [0, 1, 2])).toThrow(RangeError);
    expect(() => new MonotoneTable([0, 1], [0])).toThrow(RangeError);
  });
});
