import { describe, expect, it } from 'vitest';
import { STEFAN_BOLTZMANN } from '../../../src/sim/constants.ts';
import { annandCoefficient, annandRadiation } from '../../../src/sim/heat-transfer/annand.ts';
import { gasConductivity, gasViscosity } from '../../../src/sim/heat-transfer/gas-transport.ts';
import { bar } from '../../../src/sim/units.ts';

describe('annandCoefficient', () => {
  // 50 mm bore, 40 bar, 2000 K, 10 m/s. By hand: rho 6.969 kg/m^3, mu 60.63e-6 Pa s, k 0.1039 W/(m K), Re 57 470.
  it.each([
    [0.26, 1159],
    [0.49, 2184],
  ])('with multiplier %d gives %d W/(m² K) at 40 bar, 2000 K, 10 m/s, bore 50 mm', (a, expected) => {
    const density = (40 * bar) / (287 * 2000);
    expect(Math.abs(annandCoefficient(a, 0.7, 0.05, density, 2000, 10) / expected - 1)).toBeLessThan(2e-3);
  });

  it('grows by 2^0.7 with density and with piston speed, falls by 2^-0.3 with bore', () => {
    const base = annandCoefficient(0.26, 0.7, 0.05, 5, 1500, 10);
    expect(annandCoefficient(0.26, 0.7, 0.05, 10, 1500, 10) / base).toBeCloseTo(2 ** 0.7, 12);
    expect(annandCoefficient(0.26, 0.7, 0.05, 5, 1500, 20) / base).toBeCloseTo(2 ** 0.7, 12);
    expect(annandCoefficient(0.26, 0.7, 0.1, 5, 1500, 10) / base).toBeCloseTo(2 ** -0.3, 12);
  });
});

describe('annandRadiation', () => {
  it('is 0.075 of a black body: 68 kW/m² from 2000 K to 500 K', () => {
    expect(annandRadiation(0.075 * STEFAN_BOLTZMANN, 2000, 500) / 1e3).toBeCloseTo(67.78, 1);
  });

  it('changes sign with the temperature difference and vanishes with it', () => {
    expect(annandRadiation(4e-9, 500, 500)).toBe(0);
    expect(annandRadiation(4e-9, 400, 600)).toBeCloseTo(-annandRadiation(4e-9, 600, 400), 9);
  });
});

describe('gasViscosity and gasConductivity', () => {
  // Air at 300 K and 1000 K: Incropera & DeWitt 2002, table A.4.
  it.each([
    [300, 18.46e-6, 26.3e-3],
    [1000, 42.44e-6, 66.7e-3],
  ])('are within 5 %% of air at %d K', (T, viscosity, conductivity) => {
    expect(Math.abs(gasViscosity(T) / viscosity - 1)).toBeLessThan(0.05);
    expect(Math.abs(gasConductivity(T) / conductivity - 1)).toBeLessThan(0.05);
  });

  it('stay positive from 150 to 3600 K', () => {
    for (let T = 150; T <= 3600; T += 50) {
      expect(gasViscosity(T)).toBeGreaterThan(0);
      expect(gasConductivity(T)).toBeGreaterThan(0);
    }
  });
});
