import { describe, expect, it } from 'vitest';
import { ELEMENTS } from '../../../src/sim/gas/elements.ts';
import { molarMassOf } from '../../../src/sim/gas/constituent.ts';
import { blend, withOil } from '../../../src/sim/gas/blend.ts';
import type { Fuel } from '../../../src/sim/gas/fuel.ts';
import {
  liquidEnthalpy,
  molarEnthalpy,
  stoichiometricAirFuelRatio,
  vapourHeatingValue,
} from '../../../src/sim/gas/fuel.ts';
import { FUELS, OIL } from '../../../src/sim/gas/fuels.ts';
import { enthalpy, specificHeat } from '../../../src/sim/gas/polynomial.ts';
import { saturationPressure } from '../../../src/sim/gas/saturation.ts';
import { SPECIES, speciesConstituent } from '../../../src/sim/gas/species.ts';

const T0 = 298.15;
const { petrol, isooctane, methanol, ethanol } = FUELS;
const relative = (value: number, expected: number) => Math.abs(value / expected - 1);

/** Enthalpy that complete combustion of a kilogram of liquid at 298.15 K gives, from the polynomials alone [J/kg]. */
function reactionHeat(fuel: Fuel): number {
  const h = (key: 'O2' | 'CO2' | 'H2O') => molarEnthalpy(speciesConstituent(SPECIES[key]));
  const { C, H, O } = fuel.atoms;
  const burned = C * h('CO2') + (H / 2) * h('H2O');
  return liquidEnthalpy(fuel, T0) - (burned - (C + H / 4 - O / 2) * h('O2')) / fuel.molarMass;
}

describe('FUELS', () => {
  it('give their heating value as the reaction enthalpy at 298.15 K to 1e-9, oil and blends included', () => {
    const e10 = blend('e10', [
      { volume: 9, fuel: petrol },
      { volume: 1, fuel: ethanol },
    ]);
    for (const fuel of [...Object.values(FUELS), OIL, e10, withOil(e10, 0.03)])
      expect(relative(reactionHeat(fuel), fuel.lowerHeatingValue), fuel.name).toBeLessThan(1e-9);
  });

  // Alternative Fuels Data Center (18,676, 8,637, 11,585 Btu/lb); Heywood 1988, table D.4.
  it.each([
    ['petrol', 43.44e6],
    ['isooctane', 44.3e6],
    ['methanol', 20.09e6],
    ['ethanol', 26.95e6],
  ])('give %s its published heating value of %d J/kg within 1 %%', (key, expected) => {
    expect(relative(FUELS[key].lowerHeatingValue, expected)).toBeLessThan(0.01);
  });

  it.each([
    ['petrol', 14.6],
    ['isooctane', 15.13],
    ['methanol', 6.47],
    ['ethanol', 9.0],
  ])('give %s its published stoichiometric air/fuel ratio of %d within 0.3 %%', (key, expected) => {
    expect(relative(stoichiometricAirFuelRatio(FUELS[key]), expected)).toBeLessThan(3e-3);
  });

  it('give petrol vapour the specific heat of isooctane vapour per kilogram', () => {
    for (const T of [300, 1000, 2000])
      expect(specificHeat(petrol.vapour, T)).toBeCloseTo(specificHeat(isooctane.vapour, T), 8);
  });

  it.each([
    ['isooctane', 372.39],
    ['methanol', 337.7],
    ['ethanol', 351.44],
  ])('boil %s at %d K at 101 325 Pa within 0.5 %% of pressure', (key, boiling) => {
    expect(relative(saturationPressure(FUELS[key].saturation, boiling), 101_325)).toBeLessThan(5e-3);
  });

  it('have a latent heat that Clausius and Clapeyron find in the saturation law at 298.15 K within 4 %', () => {
    for (const fuel of [isooctane, methanol, ethanol]) {
      const p = (T: number) => saturationPressure(fuel.saturation, T);
      const slope = Math.log(p(T0 + 0.1) / p(T0 - 0.1)) / 0.2;
      const latent = fuel.vapour.gasConstant * T0 * T0 * slope;
      expect(relative(latent, fuel.latentHeat), fuel.name).toBeLessThan(0.04);
    }
  });
});

describe('vapourHeatingValue', () => {
  it('exceeds the liquid value by the latent heat', () => {
    for (const fuel of Object.values(FUELS))
      expect(vapourHeatingValue(fuel.atoms, fuel.vapour) - fuel.latentHeat).toBeCloseTo(
        fuel.lowerHeatingValue,
        3,
      );
  });
});

describe('blend', () => {
  const e85 = blend('e85', [
    { volume: 0.15, fuel: petrol },
    { volume: 0.85, fuel: ethanol },
  ]);

  it('of one fuel is that fuel', () => {
    const same = blend('petrol', [{ volume: 3, fuel: petrol }]);
    for (const key of [
      'molarMass',
      'liquidDensity',
      'latentHeat',
      'lowerHeatingValue',
      'ron',
      'volatileMoles',
    ] as const)
      expect(relative(same[key], petrol[key])).toBeLessThan(1e-14);
    expect(enthalpy(same.vapour, 700)).toBeCloseTo(enthalpy(petrol.vapour, 700), 6);
  });

  it('weighs what its parts weigh: 0.15 x 745 + 0.85 x 794 = 786.65 kg/m^3', () => {
    expect(e85.liquidDensity).toBeCloseTo(786.65, 10);
  });

  it('keeps mass and elements: the same atoms per kilogram as its parts, in liquid and vapour', () => {
    const masses = [0.15 * 745, 0.85 * 794];
    for (const element of ELEMENTS) {
      const parts =
        (masses[0] * petrol.vapour.elements[element] + masses[1] * ethanol.vapour.elements[element]) /
        (masses[0] + masses[1]);
      expect(e85.vapour.elements[element]).toBeCloseTo(parts, 10);
      expect(e85.atoms[element] / e85.molarMass).toBeCloseTo(parts, 10);
    }
    expect(molarMassOf(e85.vapour)).toBeCloseTo(e85.molarMass, 14);
  });

  it('has a stoichiometric air/fuel ratio between its parts, by mass', () => {
    const w = (0.15 * 745) / 786.65;
    const expected = w * stoichiometricAirFuelRatio(petrol) + (1 - w) * stoichiometricAirFuelRatio(ethanol);
    expect(relative(stoichiometricAirFuelRatio(e85), expected)).toBeLessThan(1e-12);
  });

  it('refuses a negative volume, by name', () => {
    expect(() => blend('odd', [{ volume: -1, fuel: petrol }])).toThrow(
      'odd: volumes must be positive, got -1',
    );
  });
});

describe('withOil', () => {
  it('displaces petrol by volume: 3 % leaves 97 % of the petrol in a litre, and both sum to the density', () => {
    const fuel = withOil(petrol, 0.03);
    expect(fuel.liquidDensity).toBeCloseTo(0.97 * 745 + 0.03 * 880, 10);
    expect(fuel.involatileShare).toBeCloseTo((0.03 * 880) / (0.97 * 745 + 0.03 * 880), 12);
  });

  it('conserves carbon and hydrogen per kilogram', () => {
    const fuel = withOil(petrol, 0.05);
    const w = fuel.involatileShare;
    for (const element of ['C', 'H'] as const)
      expect(fuel.vapour.elements[element]).toBeCloseTo(
        (1 - w) * petrol.vapour.elements[element] + w * OIL.vapour.elements[element],
        10,
      );
  });

  it('changes nothing at a share of zero', () => {
    expect(withOil(petrol, 0)).toBe(petrol);
  });

  it('costs about half an octane number at 2 %', () => {
    expect(petrol.ron - withOil(petrol, 0.02).ron).toBeGreaterThan(0.3);
    expect(petrol.ron - withOil(petrol, 0.02).ron).toBeLessThan(1);
  });
});
