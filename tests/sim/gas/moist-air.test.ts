import { describe, expect, it } from 'vitest';
import { AIR } from '../../../src/sim/gas/air.ts';
import { breathedAir, vapourPressure } from '../../../src/sim/gas/moist-air.ts';
import { specificHeat } from '../../../src/sim/gas/polynomial.ts';
import { standardAtmosphere, standardHeight } from '../../../src/sim/gas/standard-atmosphere.ts';
import { atm } from '../../../src/sim/units.ts';

describe('vapourPressure', () => {
  it('is 2.339 kPa saturated at 20 °C and half of that at half humidity, within 0.5 %', () => {
    expect(vapourPressure(1, 293.15) / 2339).toBeCloseTo(1, 2);
    expect(vapourPressure(0.5, 293.15)).toBeCloseTo(vapourPressure(1, 293.15) / 2, 9);
  });
});

describe('breathedAir', () => {
  it('is dry air itself where there is no humidity', () => {
    expect(breathedAir({ pressure: atm, temperature: 293.15, humidity: 0 })).toEqual({
      gas: AIR,
      waterPerAir: 0,
      dryShare: 1,
    });
  });

  it('holds 14.7 g of water to a kilogram of dry air when saturated at 20 °C (psychrometric tables), within 0.5 %', () => {
    const { dryShare } = breathedAir({ pressure: atm, temperature: 293.15, humidity: 1 });
    expect((1 / dryShare - 1) / 14.7e-3).toBeGreaterThan(0.995);
    expect((1 / dryShare - 1) / 14.7e-3).toBeLessThan(1.005);
  });

  it('has a specific heat of 1.006 + 1.86 × 0.0147 kJ per kelvin and kilogram of dry air there, within 0.5 %', () => {
    const { gas, dryShare } = breathedAir({ pressure: atm, temperature: 293.15, humidity: 1 });
    expect(specificHeat(gas, 293.15) / dryShare / (1006 + 1860 * 14.7e-3)).toBeCloseTo(1, 2);
  });
});

describe('standardAtmosphere', () => {
  it('has 89.87 kPa and 281.65 K at 1000 m, 79.50 kPa at 2000 m (ISO 2533)', () => {
    const low = standardAtmosphere(1000);
    expect(low.pressure / 1e3).toBeCloseTo(89.87, 1);
    expect(low.temperature).toBeCloseTo(281.65, 9);
    expect(standardAtmosphere(2000).pressure / 1e3).toBeCloseTo(79.5, 1);
  });

  it('is undone by standardHeight', () => {
    for (const height of [-400, 0, 3000, 9000])
      expect(standardHeight(standardAtmosphere(height).pressure)).toBeCloseTo(height, 6);
  });
});
