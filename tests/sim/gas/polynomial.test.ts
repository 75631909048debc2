import { describe, expect, it } from 'vitest';
import { MOLAR_GAS_CONSTANT } from '../../../src/sim/constants.ts';
import { AIR } from '../../../src/sim/gas/air.ts';
import type { Constituent } from '../../../src/sim/gas/constituent.ts';
import { molarMassOf } from '../../../src/sim/gas/constituent.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';
import { enthalpy, entropy, internalEnergy, specificHeat } from '../../../src/sim/gas/polynomial.ts';
import { productMoles, productsConstituent } from '../../../src/sim/gas/products.ts';
import type { Species } from '../../../src/sim/gas/species.ts';
import { SPECIES, speciesConstituent } from '../../../src/sim/gas/species.ts';
import { readReference } from '../../helpers/read-reference.ts';

const all = Object.values<Species>(SPECIES).map(speciesConstituent);
const T0 = 298.15;

/** The mixtures that tests/reference/gas.csv names. */
function referenceMixture(name: string): Constituent {
  const lambda = /lambda ([\d.]+)/.exec(name);
  return lambda ? productsConstituent(name, productMoles(SPECIES.isooctane.atoms, Number(lambda[1]))) : AIR;
}
const reference = readReference('gas.csv');

describe('specificHeat', () => {
  it('gives the reference table for air and isooctane products, 250 to 2600 K, to its digits', () => {
    expect(reference).toHaveLength(40);
    for (const row of reference)
      expect(
        Math.abs(specificHeat(referenceMixture(row.mixture), Number(row.T_K)) - Number(row.cp_J_per_kgK)),
      ).toBeLessThan(6e-6);
  });

  it('gives 5/2 R for argon at every temperature', () => {
    const argon = speciesConstituent(SPECIES.Ar);
    for (const T of [150, 1000, 3600])
      expect(specificHeat(argon, T)).toBeCloseTo(2.5 * argon.gasConstant, 10);
  });

  // Chase, NIST-JANAF Thermochemical Tables, 4th ed. 1998 [J/(mol K)].
  it.each([
    ['N2', 29.124],
    ['O2', 29.376],
    ['CO2', 37.129],
    ['H2O', 33.59],
    ['CO', 29.142],
    ['H2', 28.836],
  ] as const)('gives %s the tabulated %d J/(mol K) at 298.15 K within 0.3 %%', (key, expected) => {
    const gas = speciesConstituent(SPECIES[key]);
    expect(Math.abs((specificHeat(gas, T0) * molarMassOf(gas)) / expected - 1)).toBeLessThan(3e-3);
  });

  it('stays positive, and above R, from 150 to 3600 K for every gas', () => {
    for (const gas of all)
      for (let T = 150; T <= 3600; T += 10) expect(specificHeat(gas, T)).toBeGreaterThan(gas.gasConstant);
  });
});

describe('enthalpy', () => {
  it('gives the reference table for air and isooctane products, 250 to 2600 K, to its digits', () => {
    for (const row of reference) {
      const gas = referenceMixture(row.mixture);
      expect(Math.abs(gas.gasConstant - Number(row.R_J_per_kgK))).toBeLessThan(6e-7);
      expect(Math.abs(enthalpy(gas, Number(row.T_K)) - Number(row.h_J_per_kg))).toBeLessThan(6e-4);
    }
  });

  // Chase 1998; Pedley et al., Thermochemical Data of Organic Compounds, 1986 for the fuels [kJ/mol].
  it.each([
    ['O2', 0],
    ['N2', 0],
    ['CO2', -393.52],
    ['H2O', -241.83],
    ['CO', -110.53],
    ['H2', 0],
    ['isooctane', -224.0],
    ['methanol', -201.0],
    ['ethanol', -235.0],
  ] as const)(
    'gives %s its formation enthalpy of %d kJ/mol at 298.15 K within 0.5 kJ/mol',
    (key, expected) => {
      const gas = speciesConstituent(SPECIES[key]);
      expect(Math.abs((enthalpy(gas, T0) * molarMassOf(gas)) / 1e3 - expected)).toBeLessThan(0.5);
    },
  );

  it('has specificHeat as its slope on both sides of the break', () => {
    for (const gas of all)
      for (const T of [300, gas.breaks[0] - 20, gas.breaks[0] + 20, 3000]) {
        const slope = (enthalpy(gas, T + 0.5) - enthalpy(gas, T - 0.5)) / 1;
        expect(Math.abs(slope / specificHeat(gas, T) - 1)).toBeLessThan(1e-6);
      }
  });

  it('is continuous at the break to 1e-4 of R T for every gas', () => {
    for (const gas of all) {
      const T = gas.breaks[0];
      const jump = enthalpy(gas, T * (1 + 1e-12)) - enthalpy(gas, T);
      expect(Math.abs(jump)).toBeLessThan(1e-4 * gas.gasConstant * T);
    }
  });
});

describe('internalEnergy', () => {
  it('is below the enthalpy by R T and rises from 150 to 3600 K for every gas', () => {
    for (const gas of all) {
      expect(enthalpy(gas, 700) - internalEnergy(gas, 700)).toBeCloseTo(gas.gasConstant * 700, 6);
      for (let T = 150; T < 3600; T += 10)
        expect(internalEnergy(gas, T + 10)).toBeGreaterThan(internalEnergy(gas, T));
    }
  });
});

describe('entropy', () => {
  it('has cp/T as its slope', () => {
    for (const gas of all)
      for (const T of [300, 900, 2500]) {
        const slope = (entropy(gas, T + 0.25) - entropy(gas, T - 0.25)) / 0.5;
        expect(Math.abs((slope * T) / specificHeat(gas, T) - 1)).toBeLessThan(1e-6);
      }
  });

  it('gives nitrogen the tabulated 191.61 J/(mol K) at 298.15 K within 0.1 % (Chase 1998)', () => {
    const gas = speciesConstituent(SPECIES.N2);
    expect(Math.abs((entropy(gas, T0) * molarMassOf(gas)) / 191.61 - 1)).toBeLessThan(1e-3);
  });

  it('adds the entropy of mixing -R sum x ln x for air', () => {
    const parts = [
      [SPECIES.O2, 0.20946],
      [SPECIES.N2, 0.78088],
      [SPECIES.Ar, 0.00966],
    ] as const;
    const molar = (gas: Constituent) => entropy(gas, 500) * molarMassOf(gas);
    const separate = parts.reduce((sum, [species, x]) => sum + x * molar(speciesConstituent(species)), 0);
    const mixing = -MOLAR_GAS_CONSTANT * parts.reduce((sum, [, x]) => sum + x * Math.log(x), 0);
    expect(molar(AIR)).toBeCloseTo(separate + mixing, 9);
  });
});

describe('FUELS vapour polynomials', () => {
  it('stay usable from 150 to 3600 K: cp above R, u rising', () => {
    for (const { vapour } of Object.values(FUELS))
      for (let T = 150; T < 3600; T += 10) {
        expect(specificHeat(vapour, T)).toBeGreaterThan(vapour.gasConstant);
        expect(internalEnergy(vapour, T + 10)).toBeGreaterThan(internalEnergy(vapour, T));
      }
  });
});
