import { describe, expect, it } from 'vitest';
import { orificeMassFlow } from '../../../src/sim/exchange/orifice.ts';
import { readReference } from '../../helpers/read-reference.ts';

describe('orificeMassFlow', () => {
  it('gives the reference table, subcritical and choked, to its digits', () => {
    const rows = readReference('orifice.csv');
    expect(rows).toHaveLength(24);
    for (const row of rows) {
      const [p0, T0, R, gamma, p] = ['p_up_Pa', 'T_up_K', 'R_J_per_kgK', 'gamma', 'p_down_Pa'].map((key) =>
        Number(row[key]),
      );
      expect(
        Math.abs(orificeMassFlow(1, p0, T0, p, gamma, R) - Number(row.mass_flux_kg_per_s_m2)),
      ).toBeLessThan(6e-7);
    }
  });

  it('passes 241.24 kg/s per m² of choked air at 101 325 Pa, 288.15 K', () => {
    expect(orificeMassFlow(1, 101_325, 288.15, 40_000, 1.4, 287.05)).toBeCloseTo(241.24, 2);
  });

  it('does not change below the critical ratio 0.5283', () => {
    const at = (ratio: number) => orificeMassFlow(1, 101_325, 288.15, ratio * 101_325, 1.4, 287.05);
    expect(at(0.528)).toBe(at(0));
    expect(at(0.54)).toBeLessThan(at(0.528));
  });

  it('tends to CdA·√(2ρΔp) for a small pressure drop', () => {
    const [p0, T0, R, dp] = [101_325, 288.15, 287.05, 1];
    const incompressible = Math.sqrt((2 * p0 * dp) / (R * T0));
    expect(Math.abs(orificeMassFlow(1, p0, T0, p0 - dp, 1.4, R) / incompressible - 1)).toBeLessThan(1e-5);
  });

  it('passes nothing at equal pressures, and gives NaN when the sides are swapped', () => {
    expect(orificeMassFlow(1, 1e5, 300, 1e5, 1.4, 287)).toBe(0);
    expect(orificeMassFlow(1, 1e5, 300, 1.1e5, 1.4, 287)).toBeNaN();
  });
});
