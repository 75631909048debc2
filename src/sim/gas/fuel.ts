import { THERMOCHEMICAL_TEMPERATURE } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import type { Elements } from './elements.ts';
import { AIR, AIR_MOLE_FRACTIONS } from './air.ts';
import { molarMassOf } from './constituent.ts';
import { molarMassOfAtoms } from './elements.ts';
import { enthalpy } from './polynomial.ts';
import { oxygenDemand } from './products.ts';
import type { SaturationTerm } from './saturation.ts';
import { SPECIES, speciesConstituent } from './species.ts';

/** A liquid fuel and its vapour. */
export interface Fuel {
  readonly name: string;
  /** Atoms per (mean) molecule. */
  readonly atoms: Elements;
  /** [kg/mol] */
  readonly molarMass: number;
  /** At 15 degrees Celsius [kg/m^3]. */
  readonly liquidDensity: number;
  /** [J/(kg K)] */
  readonly liquidSpecificHeat: number;
  /** Heat of evaporation at 298.15 K [J/kg]. */
  readonly latentHeat: number;
  /** Lower heating value of the liquid at 298.15 K, water as vapour [J/kg]. */
  readonly lowerHeatingValue: number;
  /** Research and motor octane numbers [-]. */
  readonly ron: number;
  readonly mon: number;
  readonly vapour: Constituent;
  readonly saturation: readonly SaturationTerm[];
  /** Share by mass that never evaporates in the tract, such as oil [-]. */
  readonly involatileShare: number;
  /** Amount of vapour that the rest makes [mol/kg of fuel]. */
  readonly volatileMoles: number;
  /** Where the figures come from. */
  readonly source: string;
}

const OXYGEN = speciesConstituent(SPECIES.O2);
const CARBON_DIOXIDE = speciesConstituent(SPECIES.CO2);
const STEAM = speciesConstituent(SPECIES.H2O);

/** Enthalpy per mole at 298.15 K [J/mol]. */
export const molarEnthalpy = (gas: Constituent) =>
  enthalpy(gas, THERMOCHEMICAL_TEMPERATURE) * molarMassOf(gas);

/**
 * Enthalpy per mole of fuel that complete combustion at 298.15 K would leave a fuel vapour of zero enthalpy with [J/mol]:
 *   h_products - h_O2,   products CO2 and steam
 */
export const burnedEnthalpy = (atoms: Elements): number =>
  atoms.C * molarEnthalpy(CARBON_DIOXIDE) +
  (atoms.H / 2) * molarEnthalpy(STEAM) -
  oxygenDemand(atoms) * molarEnthalpy(OXYGEN);

/** Lower heating value of a fuel's vapour [J/kg]: enthalpy of complete combustion at 298.15 K, from the polynomials. */
export const vapourHeatingValue = (atoms: Elements, vapour: Constituent): number =>
  enthalpy(vapour, THERMOCHEMICAL_TEMPERATURE) - burnedEnthalpy(atoms) / molarMassOfAtoms(atoms);

/** Mass of dry air that burns one mass of fuel completely [-]. */
export const stoichiometricAirFuelRatio = (fuel: Fuel): number =>
  ((oxygenDemand(fuel.atoms) / AIR_MOLE_FRACTIONS.O2) * molarMassOf(AIR)) / fuel.molarMass;

/** Enthalpy of the liquid on the absolute scale of the vapour [J/kg] at temperature T [K]; exact at 298.15 K. */
export const liquidEnthalpy = (fuel: Fuel, T: number): number =>
  enthalpy(fuel.vapour, THERMOCHEMICAL_TEMPERATURE) -
  fuel.latentHeat +
  fuel.liquidSpecificHeat * (T - THERMOCHEMICAL_TEMPERATURE);
