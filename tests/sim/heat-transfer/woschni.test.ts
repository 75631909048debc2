import { describe, expect, it } from 'vitest';
import { woschniCoefficient, woschniVelocity } from '../../../src/sim/heat-transfer/woschni.ts';
import { bar } from '../../../src/sim/units.ts';

describe('woschniCoefficient', () => {
  // By hand: 130 · 0.05^-0.2 (1.8206) · 40^0.8 (19.13) · 2000^-0.53 (0.01779) · 20^0.8 (10.986).
  it('gives 885 W/(m² K) at 40 bar, 2000 K, w 20 m/s, bore 50 mm', () => {
    expect(Math.abs(woschniCoefficient(1, 0.05, 40 * bar, 2000, 20) / 885 - 1)).toBeLessThan(1e-3);
  });

  it('agrees within 1 % at 300 K with the printed form in kPa, 3.26 B^-0.2 p^0.8 T^-0.55 w^0.8, less T^-0.02', () => {
    // Heywood 1988, eq. 12.12.
    const printed = 3.26 * 0.05 ** -0.2 * 4000 ** 0.8 * 300 ** -0.55 * 20 ** 0.8;
    const ours = woschniCoefficient(1, 0.05, 40 * bar, 300, 20);
    expect(Math.abs((ours * 300 ** -0.02) / printed - 1)).toBeLessThan(0.01);
  });
});

describe('woschniVelocity', () => {
  it('is C1 c_m alone while the gas stands no higher than the motored pressure: 22.8 m/s at 10 m/s, shut', () => {
    expect(woschniVelocity(2.28, 3.24e-3, 10, 5e-5, 1, 10 * bar, 11 * bar)).toBeCloseTo(22.8, 12);
  });

  it('adds C2 V_s T_r/(p_r V_r) Δp: 9.72 m/s for 3 bar over motored, 400 K at 1 bar in two fifths of the volume swept', () => {
    // 3.24e-3 · (5e-5 / 2e-5) · 400 / 1 bar · 3 bar = 9.72 m/s
    const share = 400 / (bar * 2e-5);
    expect(woschniVelocity(0, 3.24e-3, 10, 5e-5, share, 13 * bar, 10 * bar)).toBeCloseTo(9.72, 10);
  });
});
