import { describe, expect, it } from 'vitest';
import { ConstituentSet } from '../../../src/sim/gas/constituent-set.ts';
import { dropEvaporationRate } from '../../../src/sim/gas/drop-evaporation.ts';
import { liquidEnthalpy } from '../../../src/sim/gas/fuel.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';
import { liquidFuel } from '../../../src/sim/gas/liquid-fuel.ts';
import { enthalpy } from '../../../src/sim/gas/polynomial.ts';
import { um } from '../../../src/sim/units.ts';

describe('liquidFuel', () => {
  it('has the enthalpy of the liquid as its internal energy, and makes no pressure', () => {
    const u = new Float64Array(1);
    const cv = new Float64Array(1);
    for (const fuel of Object.values(FUELS)) {
      const liquid = liquidFuel(fuel);
      for (const T of [250, 298.15, 420]) {
        new ConstituentSet([liquid]).evaluate(T, u, cv, 0);
        expect(u[0]! / liquidEnthalpy(fuel, T)).toBeCloseTo(1, 12);
        expect(cv[0]).toBeCloseTo(fuel.liquidSpecificHeat, 9);
      }
      expect(liquid.gasConstant).toBe(0);
    }
  });

  it('takes up the latent heat at 298.15 K on its way to vapour', () => {
    const { methanol } = FUELS;
    const taken = enthalpy(methanol.vapour, 298.15) - enthalpy(liquidFuel(methanol), 298.15);
    expect(taken / 1177e3).toBeCloseTo(1, 12);
  });
});

describe('dropEvaporationRate', () => {
  it('empties drops of isooctane of 20 µm at 600 K within 1.0 ms, by hand', () => {
    // B = 1030 (600 - 372.4) / 308e3 = 0.761;  K = 8 · 0.04 / (692 · 1030) ln 1.761 = 2.54e-7 m²/s;  2/3 · 4e-10 / K = 1.05 ms
    expect(1e3 / dropEvaporationRate(FUELS.isooctane, 20 * um)).toBeCloseTo(1.05, 2);
  });

  it('goes with one over the square of the diameter, and is three times slower for methanol', () => {
    const { petrol, methanol } = FUELS;
    expect(dropEvaporationRate(petrol, 10 * um) / dropEvaporationRate(petrol, 30 * um)).toBeCloseTo(9, 9);
    const ratio = dropEvaporationRate(petrol, 20 * um) / dropEvaporationRate(methanol, 20 * um);
    expect(ratio).toBeGreaterThan(2.5);
    expect(ratio).toBeLessThan(3.5);
  });
});
