import { MOLAR_GAS_CONSTANT } from '../constants.ts';
import { findRoot } from '../numerics/find-root.ts';
import { atm } from '../units.ts';
import type { Elements } from './elements.ts';
import type { Species } from './species.ts';
import { SPECIES } from './species.ts';

/** Species that the equilibrium knows; argon and anything else stand by. */
export const EQUILIBRIUM_SPECIES = [
  'CO2',
  'CO',
  'H2O',
  'H2',
  'OH',
  'H',
  'O2',
  'O',
  'N2',
  'NO',
  'Ar',
] as const;
export type EquilibriumSpecies = (typeof EQUILIBRIUM_SPECIES)[number];
/** Amounts [mol/kg]. */
export type Amounts = Readonly<Record<EquilibriumSpecies, number>>;

/** g / (R T) of one mole at one atmosphere [-]. */
function gibbs({ breakTemperature, low, high }: Species, T: number): number {
  const [a1, a2, a3, a4, a5, a6, a7] = T > breakTemperature ? high : low;
  return a1 * (1 - Math.log(T)) - T * (a2 / 2 + T * (a3 / 6 + T * (a4 / 12 + (T * a5) / 20))) + a6 / T - a7;
}

/** Reactions that make each molecule from those that the rest is counted in. */
const FORMED = {
  CO2: { CO: 1, O2: 0.5 },
  H2O: { H2: 1, O2: 0.5 },
  OH: { H2: 0.5, O2: 0.5 },
  H: { H2: 0.5 },
  O: { O2: 0.5 },
  NO: { N2: 0.5, O2: 0.5 },
} as const satisfies Partial<Record<EquilibriumSpecies, Partial<Record<EquilibriumSpecies, number>>>>;

/**
 * Natural logarithm of an equilibrium constant in partial pressures over one atmosphere [-].
 *
 *   ln K = sum nu_i g_i / (R T) - g / (R T)       of the reaction  sum nu_i A_i -> molecule
 *
 * Valid: 1000-3500 K by the polynomials' high range, and below by the low one. Source: JANAF tables give the same to about 0.01.
 */
export function lnFormation(molecule: keyof typeof FORMED, T: number): number {
  const parts: Partial<Record<EquilibriumSpecies, number>> = FORMED[molecule];
  return Object.entries(parts).reduce(
    (sum, [part, nu]) => sum + nu * gibbs(SPECIES[part as EquilibriumSpecies], T),
    -gibbs(SPECIES[molecule], T),
  );
}

/**
 * Burned gas in chemical equilibrium at a temperature and density.
 *
 *   p_i = n_i rho R T / p0 of each species;   with o = sqrt(p_O2), h = sqrt(p_H2), n = sqrt(p_N2):
 *   CO2 = K1 o CO, H2O = K2 o h^2, OH = K3 o h, H = K4 h, O = K5 o, NO = K6 o n
 *   carbon:   CO (1 + K1 o) = C          hydrogen: 2 (1 + K2 o) h^2 + (K3 o + K4) h = H        nitrogen: 2 n^2 + K6 o n = N
 *   oxygen:   2 CO2 + CO + H2O + OH + 2 o^2 + O + NO = O        one equation in o, whose left side rises
 *
 * @param of      - atoms [mol/kg]
 * @param T       - [K]
 * @param density - [kg/m^3]
 *
 * Valid: ideal gas, no soot (more oxygen than carbon); 1000-3500 K. Numerics: bisection-safe root in ln o.
 * Source: method of equilibrium constants, as in Olikara & Borman, SAE 750468, 1975; thermodynamic data: see species.ts.
 */
export function equilibrium(of: Elements, T: number, density: number): Amounts {
  const scale = (density * MOLAR_GAS_CONSTANT * T) / atm;
  const K = (molecule: keyof typeof FORMED) => Math.exp(lnFormation(molecule, T));
  const [K1, K2, K3, K4, K5, K6] = [K('CO2'), K('H2O'), K('OH'), K('H'), K('O'), K('NO')];
  const [C, H, O, N] = [of.C * scale, of.H * scale, of.O * scale, of.N * scale];
  const at = (lnO: number) => {
    const o = Math.exp(lnO);
    const CO = C / (1 + K1 * o);
    const h = rootOf(2 * (1 + K2 * o), K3 * o + K4, H);
    const n = rootOf(2, K6 * o, N);
    return {
      CO,
      CO2: K1 * o * CO,
      H2: h * h,
      H2O: K2 * o * h * h,
      OH: K3 * o * h,
      H: K4 * h,
      O2: o * o,
      O: K5 * o,
      N2: n * n,
      NO: K6 * o * n,
    };
  };
  const surplus = (lnO: number) => {
    const { CO2, CO, H2O, OH, O2, O: atoms, NO } = at(lnO);
    return 2 * CO2 + CO + H2O + OH + 2 * O2 + atoms + NO - O;
  };
  const most = 0.5 * Math.log(O / 2);
  const found = at(findRoot(surplus, most - 60, most, 1e-12));
  const amounts = Object.fromEntries(Object.entries(found).map(([name, p]) => [name, p / scale]));
  return { ...amounts, Ar: of.Ar } as Amounts;
}

/** Positive root of a x^2 + b x = c, written so that nothing cancels. */
const rootOf = (a: number, b: number, c: number): number => (2 * c) / (b + Math.sqrt(b * b + 4 * a * c));

/** The same at a pressure [Pa]: the density is found with it. */
export function equilibriumAtPressure(of: Elements, T: number, pressure: number): Amounts {
  const molar = (lnDensity: number) => molesOf(equilibrium(of, T, Math.exp(lnDensity)));
  const excess = (lnDensity: number) =>
    Math.exp(lnDensity) * molar(lnDensity) * MOLAR_GAS_CONSTANT * T - pressure;
  const guess = Math.log((pressure * 0.029) / (MOLAR_GAS_CONSTANT * T));
  return equilibrium(of, T, Math.exp(findRoot(excess, guess - 3, guess + 3, 1e-10)));
}

/** All molecules [mol/kg]. */
export const molesOf = (amounts: Amounts): number =>
  EQUILIBRIUM_SPECIES.reduce((sum, name) => sum + amounts[name], 0);

/** Absolute enthalpy [J/kg]; see polynomial.ts. */
export const enthalpyOf = (amounts: Amounts, T: number): number =>
  EQUILIBRIUM_SPECIES.reduce((sum, name) => {
    const { breakTemperature, low, high }: Species = SPECIES[name];
    const [a1, a2, a3, a4, a5, a6] = T > breakTemperature ? high : low;
    const h = a6 + T * (a1 + T * (a2 / 2 + T * (a3 / 3 + T * (a4 / 4 + (T * a5) / 5))));
    return sum + amounts[name] * MOLAR_GAS_CONSTANT * h;
  }, 0);
