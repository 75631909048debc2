import { describe, expect, it } from 'vitest';
import { hohenbergCoefficient } from '../../../src/sim/heat-transfer/hohenberg.ts';
import { bar, cc } from '../../../src/sim/units.ts';

describe('hohenbergCoefficient', () => {
  // By hand: 130 · (3e-5)^-0.06 (1.868) · 40^0.8 (19.13) · 2000^-0.4 (0.04782) · 11.4^0.8 (7.007).
  it('gives 1557 W/(m² K) at 40 bar, 2000 K, 10 m/s in 30 cc', () => {
    expect(Math.abs(hohenbergCoefficient(1, 30 * cc, 40 * bar, 2000, 10) / 1557 - 1)).toBeLessThan(1e-3);
  });

  it('does not vanish where the piston stands: the 1.4 m/s of the gas itself are left', () => {
    const still = hohenbergCoefficient(1, 30 * cc, 40 * bar, 2000, 0);
    expect(still / hohenbergCoefficient(1, 30 * cc, 40 * bar, 2000, 1.4)).toBeCloseTo(0.5 ** 0.8, 12);
  });
});
