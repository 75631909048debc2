import { AIR } from '../../../src/sim/gas/air.ts';
import { molarMassOf } from '../../../src/sim/gas/constituent.ts';
import { chargeFuel } from '../../../src/sim/gas/charge-fuel.ts';
import { evaporateInto } from '../../../src/sim/gas/evaporation.ts';
import { molarEnthalpy, stoichiometricAirFuelRatio } from '../../../src/sim/gas/fuel.ts';
import { FUELS } from '../../../src/sim/gas/fuels.ts';
import { enthalpy, specificHeat } from '../../../src/sim/gas/polynomial.ts';
import { productMoles, productsConstituent } from '../../../src/sim/gas/products.ts';
import { saturationPressure } from '../../../src/sim/gas/saturation.ts';
import { SPECIES, speciesConstituent } from '../../../src/sim/gas/species.ts';
import { MJ, btu, kJ, pound } from '../../../src/sim/units.ts';
import { readReference } from '../../helpers/read-reference.ts';
import type { Comparison, Subject } from './comparison.ts';

const T0 = 298.15;
const TABLE = 'tests/reference, worked out apart from this program from the same published polynomials';
const JANAF = 'Chase, NIST-JANAF Thermochemical Tables, 4th ed., 1998';
const PEDLEY = 'Pedley, Naylor & Kirby, Thermochemical Data of Organic Compounds, 1986';
const AFDC = 'US Department of Energy, Alternative Fuels Data Center, fuel properties';

const mixtures = readReference('gas.csv').map((row) => {
  const lambda = /lambda ([\d.]+)/.exec(row['mixture']!);
  const gas = lambda
    ? productsConstituent('burned', productMoles(SPECIES.isooctane.atoms, Number(lambda[1])))
    : AIR;
  return { row, gas, T: Number(row['T_K']) };
});

const tables: readonly Comparison[] = [
  {
    quantity: 'specific heat of air and of products of isooctane at λ 0.8 to 1.2, 250 to 2600 K',
    origin: 'tabulated',
    source: TABLE,
    unit: 'J/(kg K)',
    values: mixtures.map(({ row, gas, T }) => [Number(row['cp_J_per_kgK']), specificHeat(gas, T)]),
    within: { amount: 5e-6 },
    because: 'half of the last digit',
  },
  {
    quantity: 'absolute enthalpy of the same',
    origin: 'tabulated',
    source: TABLE,
    unit: 'J/kg',
    values: mixtures.map(({ row, gas, T }) => [Number(row['h_J_per_kg']), enthalpy(gas, T)]),
    within: { amount: 5e-4 },
    because: 'half of the last digit',
  },
  {
    quantity: 'gas constant of the same',
    origin: 'tabulated',
    source: TABLE,
    unit: 'J/(kg K)',
    values: mixtures.map(({ row, gas }) => [Number(row['R_J_per_kgK']), gas.gasConstant]),
    within: { amount: 5e-7 },
    because: 'half of the last digit',
  },
  {
    quantity: 'amounts of seven products of isooctane, λ 0.7 to 1.3',
    origin: 'tabulated',
    source: `${TABLE}; frozen water-gas constant 3.5`,
    unit: 'mol/mol',
    values: readReference('products.csv').flatMap((row) =>
      Object.entries(productMoles(SPECIES.isooctane.atoms, Number(row['lambda']))).map(
        ([gas, moles]): [number, number] => [Number(row[gas]), moles],
      ),
    ),
    within: { amount: 5e-7 },
    because: 'half of the last digit',
  },
];

const FORMATION: readonly (readonly [gas: keyof typeof SPECIES, kJ_per_mol: number, source: string])[] = [
  ['CO2', -393.52, JANAF],
  ['H2O', -241.83, JANAF],
  ['CO', -110.53, JANAF],
  ['isooctane', -224.0, PEDLEY],
  ['methanol', -201.0, PEDLEY],
  ['ethanol', -235.0, PEDLEY],
];

const substances: readonly Comparison[] = [
  ...FORMATION.map(([gas, value, source]): Comparison => ({
    quantity: `formation enthalpy of ${gas}, gas at 298.15 K`,
    origin: 'tabulated',
    source,
    unit: 'kJ/mol',
    values: [[value, molarEnthalpy(speciesConstituent(SPECIES[gas])) / kJ]],
    within: { amount: 0.5 },
    because: 'tables differ among themselves by that much',
  })),
  {
    quantity: 'specific heat at 298.15 K of N₂, O₂, CO₂, steam, CO, H₂',
    origin: 'tabulated',
    source: JANAF,
    unit: 'J/(mol K)',
    values: (
      [
        ['N2', 29.124],
        ['O2', 29.376],
        ['CO2', 37.129],
        ['H2O', 33.59],
        ['CO', 29.142],
        ['H2', 28.836],
      ] as const
    ).map(([key, value]) => {
      const gas = speciesConstituent(SPECIES[key]);
      return [value, specificHeat(gas, T0) * molarMassOf(gas)];
    }),
    within: { share: 3e-3 },
    because: 'the polynomials are fits',
  },
];

/** Of air, near 300 to 400 K [J/(kg K)]. */
const AIR_HEAT = 1010;

type FuelName = 'petrol' | 'isooctane' | 'methanol' | 'ethanol';

const ofFuels = (
  quantity: (fuel: string) => string,
  unit: string,
  share: number,
  because: string,
  printed: readonly (readonly [FuelName, number, string])[],
  ours: (fuel: FuelName) => number,
): readonly Comparison[] =>
  printed.map(([fuel, value, source]) => ({
    quantity: quantity(fuel),
    origin: 'tabulated',
    source,
    unit,
    values: [[value, ours(fuel)]],
    within: { share },
    because,
  }));

/** At the stoichiometric ratio [kJ/kg of air]. */
function latentPerAir(fuel: FuelName): number {
  return FUELS[fuel]!.latentHeat / stoichiometricAirFuelRatio(FUELS[fuel]!) / kJ;
}

const HEYWOOD = 'Heywood, Internal Combustion Engine Fundamentals, 1988, table D.4';

const fuels: readonly Comparison[] = [
  ...ofFuels(
    (fuel) => `lower heating value of ${fuel}, liquid`,
    'MJ/kg',
    0.01,
    'ours follows from formation enthalpies (petrol: set to a typical grade); grades and tables differ by that much',
    [
      ['petrol', 43.44, AFDC],
      ['isooctane', 44.3, HEYWOOD],
      ['methanol', 20.09, AFDC],
      ['ethanol', 26.95, AFDC],
    ],
    (fuel) => FUELS[fuel]!.lowerHeatingValue / MJ,
  ),
  ...ofFuels(
    (fuel) => `stoichiometric air/fuel ratio of ${fuel}`,
    '',
    3e-3,
    'two or three digits printed, other air',
    [
      ['petrol', 14.6, `${HEYWOOD}, for CH1.87`],
      ['isooctane', 15.13, HEYWOOD],
      ['methanol', 6.47, HEYWOOD],
      ['ethanol', 9.0, HEYWOOD],
    ],
    (fuel) => stoichiometricAirFuelRatio(FUELS[fuel]!),
  ),
  {
    quantity:
      'vapour pressure of isooctane (372.39 K), methanol (337.7 K), ethanol (351.44 K) at their boiling points',
    origin: 'tabulated',
    source:
      'boiling points at 101.325 kPa: Willingham et al., J. Res. Natl. Bur. Stand. 35:219, 1945; Ambrose & Sprake, J. Chem. Thermodyn. 2:631, 1970',
    unit: 'Pa',
    values: (
      [
        ['isooctane', 372.39],
        ['methanol', 337.7],
        ['ethanol', 351.44],
      ] as const
    ).map(([fuel, T]) => [101_325, saturationPressure(FUELS[fuel]!.saturation, T)]),
    within: { share: 5e-3 },
    because: 'Antoine’s equation at the end of its range',
  },
  ...ofFuels(
    (fuel) => `latent heat of ${fuel} per kilogram of air at λ 1`,
    'kJ/kg',
    5e-3,
    'printed with two or three digits',
    [
      ['methanol', (78.4 * btu) / pound / kJ, `${AFDC}: 78.4 Btu/lb`],
      ['ethanol', (44 * btu) / pound / kJ, `${AFDC}: 44 Btu/lb`],
    ],
    latentPerAir,
  ),
  {
    quantity: 'latent heat of petrol per kilogram of air at λ 1',
    origin: 'tabulated',
    source: `${AFDC}: about 10 Btu/lb`,
    unit: 'kJ/kg',
    values: [[(10 * btu) / pound / kJ, latentPerAir('petrol')]],
    within: { share: 0.05 },
    because: 'half of the last digit of “about 10”',
  },
  ...(
    [
      ['petrol', 330, 1660],
      ['methanol', 450, 1450],
      ['ethanol', 420, 1500],
    ] as const
  ).map(([fuel, hot, vapourHeat]): Comparison => ({
    quantity: `cooling of air of ${hot} K by ${fuel} at λ 1 that evaporates wholly`,
    origin: 'closed form',
    source: `(AFR c_air + c_liquid) ΔT = L − (c_liquid − c_vapour)(T − 298 K), vapour ${vapourHeat} J/(kg K), air 1010, all constant`,
    unit: 'K',
    values: [[cooledBy(fuel, hot, vapourHeat), hot - evaporated(fuel, hot)]],
    within: { share: 0.02 },
    because: 'specific heats are constant there and rise with temperature here',
  })),
];

/** Petrol with a share of ethanol by volume. */
const ethanolBlend = (share: number) =>
  chargeFuel({ fuel: 'petrol', blend: { fuel: 'ethanol', share }, oilShare: 0 });
const volumetricHeat = (share: number): number =>
  ethanolBlend(share).lowerHeatingValue * ethanolBlend(share).liquidDensity;
const heatLost = (share: number): number => 1 - volumetricHeat(share) / volumetricHeat(0);

const EIA =
  'US Energy Information Administration, How much ethanol is in gasoline, and how does it affect fuel economy';

const blends: readonly Comparison[] = [
  {
    quantity: 'stoichiometric air/fuel ratio of petrol with 10 % and with 85 % ethanol by volume',
    origin: 'closed form',
    source: `by hand from 14.6 and 9.0 kg of air (${HEYWOOD}) and 745 and 794 kg/m³: 10.59 % and 85.79 % ethanol by mass`,
    unit: '',
    values: [
      [0.89412 * 14.6 + 0.10588 * 9.0, stoichiometricAirFuelRatio(ethanolBlend(0.1))],
      [0.14205 * 14.6 + 0.85795 * 9.0, stoichiometricAirFuelRatio(ethanolBlend(0.85))],
    ],
    within: { share: 3e-3 },
    because: 'two or three digits printed, other air',
  },
  {
    quantity: 'lower heating value of the same',
    origin: 'closed form',
    source: `by hand from 43.44 and 26.95 MJ/kg (${AFDC}) and the same shares by mass`,
    unit: 'MJ/kg',
    values: [
      [0.89412 * 43.44 + 0.10588 * 26.95, ethanolBlend(0.1).lowerHeatingValue / MJ],
      [0.14205 * 43.44 + 0.85795 * 26.95, ethanolBlend(0.85).lowerHeatingValue / MJ],
    ],
    within: { share: 0.01 },
    because: 'as that of the parts',
  },
  {
    quantity: 'research and motor octane number of petrol with 10 % ethanol',
    origin: 'closed form',
    source:
      'by hand, linear by mole after Anderson et al., Energy & Fuels 24:6576, 2010: 22.04 % of 108 and 92, the rest of 95 and 85',
    unit: '',
    values: [
      [0.22043 * 108 + 0.77957 * 95, ethanolBlend(0.1).ron],
      [0.22043 * 92 + 0.77957 * 85, ethanolBlend(0.1).mon],
    ],
    within: { amount: 0.01 },
    because: 'the same law; its error in print is about 2 numbers',
  },
  {
    quantity: 'heat by volume that ethanol, and petrol with 10 % of it, lack beside petrol',
    origin: 'tabulated',
    source: EIA,
    unit: '%',
    values: [
      [33, 100 * heatLost(1)],
      [3.3, 100 * heatLost(0.1)],
    ],
    within: { share: 0.05 },
    because: '“about” 33 %; grades of petrol differ by 2 % in density and as much in heat',
  },
];

/** Final temperature T = hot - dT solves the balance, which is linear in dT [K]. */
function cooledBy(fuel: FuelName, hot: number, vapourHeat: number): number {
  const { latentHeat, liquidSpecificHeat } = FUELS[fuel]!;
  const less = liquidSpecificHeat - vapourHeat;
  const airFuelRatio = stoichiometricAirFuelRatio(FUELS[fuel]!);
  return (latentHeat - less * (hot - T0)) / (airFuelRatio * AIR_HEAT + liquidSpecificHeat - less);
}

function evaporated(fuel: FuelName, hot: number): number {
  const { temperature, evaporatedShare } = evaporateInto(
    FUELS[fuel]!,
    stoichiometricAirFuelRatio(FUELS[fuel]!),
    hot,
    101_325,
    1,
  );
  return evaporatedShare === 1 ? temperature : NaN;
}

export const gas = (): Subject => ({
  title: 'Gas and fuel',
  note: 'Upper bounds often printed for charge cooling, some 24 K for petrol, 100 K for ethanol, 180 K for methanol, are latent heat over the heat capacity of the air alone. In air of workshop temperature alcohols stop at saturation long before.',
  comparisons: [...tables, ...substances, ...fuels, ...blends],
  unproven: [
    'Petrol is no substance: its vapour has isooctane’s specific heat and saturation law, and a heating value set to a typical grade.',
    'Blends are ideal liquids: the rise of vapour pressure that a little alcohol brings petrol is left out.',
    'How far burned gas keeps up with equilibrium as it cools: it is either frozen, or in equilibrium above 1500 to 1800 K.',
    'The share of fuel that evaporates before the plenum is an input. No measurement of it in a blown two-stroke was found.',
  ],
});
