import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastWorkPerVolume, workPerVolume } from '../../../src/sim/blower/internal-compression.ts';

const pressure = fc.double({ min: 2e4, max: 2e5, noNaN: true });
const ratio = fc.double({ min: 1.01, max: 4, noNaN: true });
const gamma = fc.double({ min: 1.2, max: 1.66, noNaN: true });
const seed = { seed: 11, numRuns: 200 };

describe('workPerVolume', () => {
  it('is that of a Roots blower, the pressure difference, without internal compression', () => {
    expect(workPerVolume(1, 100_000, 150_000, 1.4)).toBe(50_000);
  });

  it('tends to that of a Roots blower as the ratio tends to 1', () => {
    expect(workPerVolume(1 + 1e-9, 100_000, 150_000, 1.4)).toBeCloseTo(50_000, 2);
  });

  it('is isentropic where the outlet has just the pressure that is reached inside', () => {
    fc.assert(
      fc.property(pressure, ratio, gamma, (p1, v, g) => {
        const p2 = p1 * v ** g;
        expect(workPerVolume(v, p1, p2, g) / leastWorkPerVolume(p1, p2, g)).toBeCloseTo(1, 10);
      }),
      seed,
    );
  });

  it('is never below isentropic work, whether it compresses too much or too little', () => {
    fc.assert(
      fc.property(pressure, ratio, gamma, fc.double({ min: 0.5, max: 6, noNaN: true }), (p1, v, g, rise) => {
        const least = leastWorkPerVolume(p1, rise * p1, g);
        expect(workPerVolume(v, p1, rise * p1, g)).toBeGreaterThanOrEqual(least - 1e-9 * p1);
      }),
      seed,
    );
  });

  it('takes 37.3 kJ for a cubic metre from 1 bar to 1.4 with ratio 1.25, 4 % below a Roots blower: by hand, gamma 1.4', () => {
    // 1e5 ((1.25^0.4 - 1)/0.4 - 1) + 1.4e5/1.25, 1.25^0.4 = 1.093362
    expect(workPerVolume(1.25, 1e5, 1.4e5, 1.4)).toBeCloseTo(35_340.5, 0);
  });
});
