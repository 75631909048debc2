import type { Constituent } from './constituent.ts';
import type { Elements } from './elements.ts';
import { AIR_MOLE_FRACTIONS } from './air.ts';
import { mixConstituents } from './mix-constituents.ts';
import { SPECIES, speciesConstituent } from './species.ts';

/** Amounts [mol] per mole of fuel. */
export interface ProductMoles {
  readonly CO2: number;
  readonly H2O: number;
  readonly CO: number;
  readonly H2: number;
  readonly O2: number;
  readonly N2: number;
  readonly Ar: number;
}

/**
 * Frozen water-gas constant (n_H2O n_CO) / (n_CO2 n_H2) [-].
 *
 * Typical 3.5, range 3-4. Source: Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 4.9.1 (Spindt's value;
 * 3.8 is D'Alleva & Lovell's).
 */
export const WATER_GAS_CONSTANT = 3.5;

/** Oxygen molecules that burn one fuel molecule completely [mol/mol]. */
export const oxygenDemand = (fuel: Elements): number => fuel.C + fuel.H / 4 - fuel.O / 2;

/** Air/fuel ratio over stoichiometric at which all carbon is CO and all hydrogen H2; below it soot would form [-]. */
export const sootLimit = (fuel: Elements): number => (fuel.C - fuel.O) / 2 / oxygenDemand(fuel);

/**
 * Burned gas of one mole of fuel with carbon c, hydrogen h and oxygen o in air; no dissociation. Water that the air
 * brings along is steam among the products; h counts its hydrogen in the rich formula.
 *
 *   y = c + h/4 - o/2,   O2 supplied = lambda y
 *   lean (lambda >= 1):  CO2 = c, H2O = h/2 + w, O2 = (lambda - 1) y
 *   rich (lambda < 1):   no O2;  CO + H2 = D = 2 y (1 - lambda);  K = n_H2O n_CO / (n_CO2 n_H2)
 *                        (K - 1) CO^2 - (K (c + D) + h/2 + w - D) CO + K c D = 0, the smaller root
 *
 * @param fuel   - atoms per molecule
 * @param lambda - air/fuel ratio over stoichiometric [-]; above `sootLimit`, else NaN or a negative amount
 * @param water  - vapour that comes with the air [mol per mole of fuel]
 * @param K      - frozen water-gas constant [-]
 *
 * Valid: frozen below about 1740 K; above, dissociation is what Dissociation adds, or is missing: peak temperature is then over-stated.
 * Numerics: the root is written so that K = 1 and D = 0 need no special case.
 * Source: Heywood 1988, sec. 3.5.3 and 4.9.1.
 */
export function productMoles(
  fuel: Elements,
  lambda: number,
  water = 0,
  K = WATER_GAS_CONSTANT,
): ProductMoles {
  const y = oxygenDemand(fuel);
  const oxygen = lambda * y;
  const steam = fuel.H / 2 + water;
  const inert = {
    N2: (oxygen * AIR_MOLE_FRACTIONS.N2) / AIR_MOLE_FRACTIONS.O2 + fuel.N / 2,
    Ar: (oxygen * AIR_MOLE_FRACTIONS.Ar) / AIR_MOLE_FRACTIONS.O2 + fuel.Ar,
  };
  if (lambda >= 1) return { CO2: fuel.C, H2O: steam, CO: 0, H2: 0, O2: (lambda - 1) * y, ...inert };
  const D = 2 * y * (1 - lambda);
  const B = K * (fuel.C + D) + steam - D;
  const CO = (2 * K * fuel.C * D) / (B + Math.sqrt(B * B - 4 * (K - 1) * K * fuel.C * D));
  return { CO2: fuel.C - CO, H2O: steam - (D - CO), CO, H2: D - CO, O2: 0, ...inert };
}

const gases = (['CO2', 'H2O', 'CO', 'H2', 'O2', 'N2', 'Ar'] as const).map(
  (key) => [key, speciesConstituent(SPECIES[key])] as const,
);

/** The burned gas as one constituent; see `productMoles`. */
export const productsConstituent = (name: string, moles: ProductMoles): Constituent =>
  mixConstituents(
    name,
    gases.map(([key, gas]) => ({ moles: moles[key], gas })),
  );
