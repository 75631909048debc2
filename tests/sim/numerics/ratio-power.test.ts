import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LEAST_RATIO, ratioPower } from '../../../src/sim/numerics/ratio-power.ts';

describe('ratioPower', () => {
  it('is the power to 4e-12 over its whole range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: LEAST_RATIO, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (x, e) => {
          expect(Math.abs(ratioPower(x, e) / x ** e - 1)).toBeLessThan(4e-12);
        },
      ),
      { seed: 20260, numRuns: 3000 },
    );
  });

  it('is one at a ratio of one and at a power of nought', () => {
    expect(ratioPower(1, 0.7)).toBe(1);
    expect(ratioPower(0.6, 0)).toBe(1);
  });
});
