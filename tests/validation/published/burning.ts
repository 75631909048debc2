import {
  dilutionFactor,
  FLAME_SPEED_LAWS,
  laminarFlameSpeed,
} from '../../../src/sim/combustion/flame-speed.ts';
import { ignitionDelay } from '../../../src/sim/combustion/knock.ts';
import { burnedShare } from '../../../src/sim/combustion/completeness.ts';
import { wiebeFraction } from '../../../src/sim/combustion/wiebe.ts';
import { molarMassOf } from '../../../src/sim/gas/constituent.ts';
import { enthalpyOf, equilibriumAtPressure, lnFormation } from '../../../src/sim/gas/equilibrium.ts';
import { molarEnthalpy } from '../../../src/sim/gas/fuel.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';
import { entropy } from '../../../src/sim/gas/polynomial.ts';
import { productMoles, productsConstituent } from '../../../src/sim/gas/products.ts';
import { SPECIES, speciesConstituent } from '../../../src/sim/gas/species.ts';
import { findRoot } from '../../../src/sim/numerics/find-root.ts';
import { AIR_MOLE_FRACTIONS } from '../../../src/sim/gas/air.ts';
import { atm } from '../../../src/sim/units.ts';
import { presetEngine } from '../../helpers/engines.ts';
import type { Comparison, Subject } from './comparison.ts';

const JANAF = 'Chase, NIST-JANAF Thermochemical Tables, 4th ed., 1998';
const { knock } = presetEngine('lovage-7');
const cm = 1e-2;
const ms = 1e-3;

const isooctane = (phi: number, T: number, pressure: number): number =>
  laminarFlameSpeed(FLAME_SPEED_LAWS.isooctane, T, pressure * atm, 1 / phi, 0) / cm;

/** Constant pressure, vapour and dry air at 298.15 K and 1 atm, stoichiometric [K]. */
function flameTemperature(): number {
  const fuel = FUELS['isooctane']!;
  const products = productMoles(fuel.atoms, 1);
  const gas = productsConstituent('burned', products);
  const { O2, N2, Ar } = AIR_MOLE_FRACTIONS;
  const oxygen = fuel.atoms.C + fuel.atoms.H / 4;
  const massOf = (name: 'O2' | 'N2' | 'Ar') => molarMassOf(speciesConstituent(SPECIES[name]));
  const air = oxygen * (massOf('O2') + (N2 * massOf('N2') + Ar * massOf('Ar')) / O2);
  const fresh = molarEnthalpy(fuel.vapour) / (fuel.molarMass + air);
  return findRoot(
    (T) => enthalpyOf(equilibriumAtPressure(gas.elements, T, atm), T) - fresh,
    1500,
    3000,
    1e-6,
  );
}

const constants = (
  molecule: Parameters<typeof lnFormation>[0],
  name: string,
  printed: readonly [number, number, number],
  amount: number,
  because: string,
): Comparison => ({
  quantity: `log₁₀ of the equilibrium constant of ${name} at 2000, 2500 and 3000 K`,
  origin: 'tabulated',
  source: JANAF,
  unit: '',
  values: [2000, 2500, 3000].map((T, i) => [printed[i]!, lnFormation(molecule, T) / Math.LN10]),
  within: { amount },
  because,
});

export const burning = (): Subject => ({
  title: 'Burning, knock and dissociation',
  comparisons: [
    {
      quantity: 'delay of end gas, octane 95, at 40 atm and 800 K, 50 atm and 850 K, 20 atm and 700 K',
      origin: 'closed form',
      source: '17.68 ms (ON/100)^3.402 p^−1.7 exp(3800 K/T), by hand; Douaud & Eyzat, SAE 780080, 1978',
      unit: 'ms',
      values: [
        [3.24, ignitionDelay(knock, 40 * atm, 800, 95) / ms],
        [1.68, ignitionDelay(knock, 50 * atm, 850, 95) / ms],
        [20.8, ignitionDelay(knock, 20 * atm, 700, 95) / ms],
      ],
      within: { share: 0.004 },
      because: 'three digits',
    },
    {
      quantity:
        'laminar flame speed of isooctane: fastest, and at φ 1, at 298 K and 1 atm; at φ 1, 500 K and 10 atm',
      origin: 'closed form',
      source:
        '26.3 − 84.7 (φ − 1.13)² cm/s, (T/298 K)^2.18 p^−0.16, by hand; Metghalchi & Keck, Combust. Flame 48:191, 1982',
      unit: 'cm/s',
      values: [
        [26.3, isooctane(1.13, 298, 1)],
        [24.87, isooctane(1, 298, 1)],
        [53.2, isooctane(1, 500, 10)],
      ],
      within: { share: 0.002 },
      because: 'three digits; the fit itself is true to 10 %',
    },
    {
      quantity: 'what 10 and 25 % of burned gas by mole leave of the flame speed',
      origin: 'closed form',
      source: '1 − 2.06 x^0.77, by hand; Rhodes & Keck, SAE 850047, 1985',
      unit: '',
      values: [
        [0.65, dilutionFactor(0.1)],
        [0.29, dilutionFactor(0.25)],
      ],
      within: { amount: 5e-3 },
      because: 'half of the last digit',
    },
    {
      quantity: 'burned at the end of the duration, factor 5 and 6.908',
      origin: 'published',
      source: 'Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 9.2',
      unit: '',
      values: [
        [0.993, wiebeFraction(1, 5, 2)],
        [0.999, wiebeFraction(1, 6.908, 1.5)],
      ],
      within: { amount: 5e-4 },
      because: 'half of the last digit',
    },
    {
      quantity: 'share of the fuel that burns far below the limits',
      origin: 'published',
      source: '0.95 to 0.98 in spark-ignition engines, Heywood 1988, sec. 4.9.4',
      unit: '',
      values: [[0.965, burnedShare(0.1, presetEngine('lovage-7').combustion.completeness, 0.5, 0.08)]],
      within: { amount: 0.015 },
      because: 'the span that is printed; CO and H₂ of rich products come beside it',
    },
    {
      quantity: 'formation enthalpy of OH, H, O, NO at 298.15 K',
      origin: 'tabulated',
      source: JANAF,
      unit: 'kJ/mol',
      values: (
        [
          ['OH', 38.99],
          ['H', 218.0],
          ['O', 249.18],
          ['NO', 90.29],
        ] as const
      ).map(([name, printed]) => [printed, molarEnthalpy(speciesConstituent(SPECIES[name])) / 1e3]),
      within: { amount: 1 },
      because: 'GRI-Mech 3.0 holds OH 0.4 and NO 1.0 above the tables',
    },
    {
      quantity: 'entropy of the same',
      origin: 'tabulated',
      source: JANAF,
      unit: 'J/(mol K)',
      values: (
        [
          ['OH', 183.71],
          ['H', 114.72],
          ['O', 161.06],
          ['NO', 210.76],
        ] as const
      ).map(([name, printed]) => {
        const gas = speciesConstituent(SPECIES[name]);
        return [printed, entropy(gas, 298.15) * molarMassOf(gas)];
      }),
      within: { amount: 0.04 },
      because: 'what the polynomials leave, and a standard pressure of 1 bar or 1 atm',
    },
    constants(
      'CO2',
      'CO + ½ O₂ = CO₂',
      [2.884, 1.44, 0.485],
      0.01,
      'the polynomials differ in the third digit',
    ),
    constants(
      'H2O',
      'H₂ + ½ O₂ = H₂O',
      [3.54, 2.225, 1.343],
      0.01,
      'the polynomials differ in the third digit',
    ),
    constants('H', '½ H₂ = H', [-2.788, -1.601, -0.803], 0.005, 'the polynomials differ in the third digit'),
    constants('O', '½ O₂ = O', [-3.178, -1.841, -0.949], 0.005, 'the polynomials differ in the third digit'),
    constants(
      'NO',
      '½ N₂ + ½ O₂ = NO',
      [-1.699, -1.227, -0.913],
      0.03,
      'formation enthalpy of NO, see above',
    ),
    {
      quantity: 'flame of isooctane vapour in dry air, stoichiometric, 298 K and 1 atm, in equilibrium',
      origin: 'published',
      source: 'usually printed as 2270 to 2276 K, as in Glassman & Yetter, Combustion, 4th ed., 2008',
      unit: 'K',
      values: [[2275, flameTemperature()]],
      within: { amount: 8 },
      because: 'span of what is printed for slightly different air and data',
    },
  ],
  unproven: [
    'How long burning takes and how it begins to fail: reference angles, exponents and misfire limits are typical values of other engines.',
    'The knock limit of any engine: the law was fitted to one four-stroke and its fuels.',
  ],
});
