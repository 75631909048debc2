import { describe, expect, it } from 'vitest';
import { minimize } from '../../../src/sim/numerics/minimize.ts';

describe('minimize', () => {
  it('finds the bottom of a parabola at 2 in at most 8 evaluations where golden section needs 34', () => {
    let count = 0;
    const found = minimize((x) => (count++, (x - 2) ** 2), -3, 7, 1e-6);
    expect(Math.abs(found.at - 2)).toBeLessThan(1e-6);
    expect(found.value).toBeLessThan(1e-12);
    expect(count).toBeLessThanOrEqual(8);
  });

  it('finds the minimum of x ln x at 1/e, value -1/e', () => {
    const found = minimize((x) => x * Math.log(x), 0.01, 2);
    expect(Math.abs(found.at - 1 / Math.E)).toBeLessThan(1e-7);
    expect(Math.abs(found.value + 1 / Math.E)).toBeLessThan(1e-15);
  });

  it('finds a cusp by golden section to the tolerance', () => {
    expect(Math.abs(minimize((x) => Math.abs(x - 0.3), 0, 1, 1e-9).at - 0.3)).toBeLessThan(2e-9);
  });

  it('approaches the end of the interval where the function is monotone', () => {
    expect(minimize((x) => x, 1, 4, 1e-9).at - 1).toBeLessThan(2e-9);
    expect(4 - minimize((x) => -x, 4, 1, 1e-9).at).toBeLessThan(2e-9);
  });

  it('throws where the function is not a number', () => {
    expect(() => minimize(() => NaN, 0, 1)).toThrow(RangeError);
  });
});
