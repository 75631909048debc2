import { describe, expect, it } from 'vitest';
import { Dissociation } from '../../../src/sim/gas/dissociation.ts';
import {
  enthalpyOf,
  equilibrium,
  equilibriumAtPressure,
  lnFormation,
  molesOf,
} from '../../../src/sim/gas/equilibrium.ts';
import { molarMassOf } from '../../../src/sim/gas/constituent.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';
import { enthalpy, entropy, internalEnergy } from '../../../src/sim/gas/polynomial.ts';
import { productMoles, productsConstituent } from '../../../src/sim/gas/products.ts';
import { SPECIES, speciesConstituent } from '../../../src/sim/gas/species.ts';
import { MOLAR_GAS_CONSTANT } from '../../../src/sim/constants.ts';

const burned = (lambda: number) =>
  productsConstituent('burned', productMoles(FUELS['isooctane']!.atoms, lambda));

describe('thermodynamic data of what dissociates', () => {
  // Enthalpies of formation and entropies at 298.15 K: Chase, NIST-JANAF Thermochemical Tables, 1998.
  it.each([
    ['OH', 38.99, 183.71],
    ['H', 218.0, 114.72],
    ['O', 249.18, 161.06],
    ['NO', 90.29, 210.76],
  ] as const)('%s stands within 1 kJ/mol and 0.05 J/(mol K) of the JANAF tables', (name, formation, s) => {
    const gas = speciesConstituent(SPECIES[name]);
    const M = molarMassOf(gas);
    expect(Math.abs((enthalpy(gas, 298.15) * M) / 1e3 - formation)).toBeLessThan(1);
    expect(Math.abs(entropy(gas, 298.15) * M - s)).toBeLessThan(0.05);
  });
});

describe('equilibrium', () => {
  it.each([0.8, 1, 1.3])('keeps every atom at λ %f, and obeys the constants', (lambda) => {
    const { elements } = burned(lambda);
    for (const [T, density] of [
      [1500, 0.3],
      [2500, 6],
      [3400, 0.1],
    ] as const) {
      const n = equilibrium(elements, T, density);
      expect((n.CO2 + n.CO) / elements.C).toBeCloseTo(1, 9);
      expect((2 * (n.H2O + n.H2) + n.OH + n.H) / elements.H).toBeCloseTo(1, 9);
      expect((2 * (n.CO2 + n.O2) + n.CO + n.H2O + n.OH + n.O + n.NO) / elements.O).toBeCloseTo(1, 9);
      expect((2 * n.N2 + n.NO) / elements.N).toBeCloseTo(1, 9);
      const shift = (n.CO * n.H2O) / (n.CO2 * n.H2);
      expect(Math.log(shift)).toBeCloseTo(lnFormation('H2O', T) - lnFormation('CO2', T), 6);
    }
  });

  it('tends to the complete products when cool: at 1500 K and 20 bar less than 0.1 % of carbon is CO where lean', () => {
    const gas = burned(1.2);
    const n = equilibriumAtPressure(gas.elements, 1500, 20e5);
    expect(n.CO / gas.elements.C).toBeLessThan(1e-3);
    const R = MOLAR_GAS_CONSTANT * molesOf(n);
    expect(R / gas.gasConstant).toBeCloseTo(1, 4);
    expect(Math.abs(enthalpyOf(n, 1500) - enthalpy(gas, 1500))).toBeLessThan(5e3);
  });

  it('dissociates the more, the hotter and the thinner', () => {
    const { elements } = burned(1);
    const share = (T: number, p: number) => equilibriumAtPressure(elements, T, p).CO / elements.C;
    expect(share(2400, 50e5)).toBeLessThan(share(2700, 50e5));
    expect(share(2700, 50e5)).toBeLessThan(share(2700, 10e5));
  });
});

describe('Dissociation', () => {
  const gas = burned(1);
  const table = new Dissociation(gas, 2);

  it('adds nothing at 1500 K and below', () => {
    table.evaluate(1500, 1);
    expect([table.energy, table.heat, table.gasConstant]).toEqual([0, 0, 0]);
  });

  it('gives the energy and gas constant of equilibrium between its points to 0.5 % of what it adds', () => {
    for (const T of [2030, 2377, 2712, 3040])
      for (const density of [0.7, 3.3, 9, 21]) {
        const n = equilibrium(gas.elements, T, density);
        const R = MOLAR_GAS_CONSTANT * molesOf(n);
        table.evaluate(T, Math.log(density));
        expect(table.energy / (enthalpyOf(n, T) - R * T - internalEnergy(gas, T))).toBeCloseTo(1, 2.3);
        expect(table.gasConstant / (R - gas.gasConstant)).toBeCloseTo(1, 2);
      }
  });

  it('has the slope of its energy, and no jump of either between its rows and columns', () => {
    for (const T of [1523, 1800, 2550, 2551, 2999])
      for (const x of [-1, 0.5, 2]) {
        const at = (t: number) => (table.evaluate(t, x), table.energy);
        const slope = (at(T + 1e-3) - at(T - 1e-3)) / 2e-3;
        table.evaluate(T, x);
        expect(table.heat / slope).toBeCloseTo(1, 4);
        expect(table.heat).toBeGreaterThan(0);
      }
  });
});
