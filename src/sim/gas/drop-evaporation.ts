import type { Charge } from '../engine.ts';
import { atm, um } from '../units.ts';
import { findRoot } from '../numerics/find-root.ts';
import type { Fuel } from './fuel.ts';
import { saturationPressure } from './saturation.ts';

/**
 * Sauter mean diameter of drops where none is given, by where fuel joins the air [m]. Typical; ranges 10-60 µm, into cylinders 8-25 µm.
 * Source: Zhao, Lai & Harrington, Prog. Energy Combust. Sci. 25:437, 1999, for injectors into the cylinder.
 */
export const USUAL_DROP: Readonly<Record<Charge['feed'], number>> = {
  carburettor: 30 * um,
  passages: 30 * um,
  cylinders: 15 * um,
};

/** Gas temperature at which the rate is worked out [K]. */
export const REFERENCE_TEMPERATURE = 600;
/** Of the gas round a drop, between its own temperature and the drop's [W/(m K)], [J/(kg K)]: air near 480 K. */
const CONDUCTIVITY = 0.04;
const SPECIFIC_HEAT = 1.03e3;

/**
 * How fast drops of fuel evaporate in hot gas that holds no vapour: share of what is there, per second.
 *
 *   k_600 = K / (2/3 d^2),   K = 8 lambda / (rho_l c_p) ln(1 + B),   B = c_p (600 K - T_boil) / h_fg
 *   k(T)  = k_600 (T / 600 K)^1.5
 *
 * @param fuel     - see fuel.ts; its boiling point is that of its saturation law at one atmosphere
 * @param diameter - d, Sauter mean of the drops [m]
 * @returns k_600 [1/s]
 *
 * Valid: an order of magnitude. The d-squared law is for still gas and a drop that has warmed up; a cloud of one d is taken to lose
 * mass at the first rate of its drops, 3/2 of mass over lifetime, throughout. The power 1.5 follows conductivity and ln(1 + B) of petrol from 400 to
 * 2500 K within a quarter. Source: Turns, An Introduction to Combustion, 2nd ed., 2000, eqs. 3.56-3.58 and 10.4.
 */
export function dropEvaporationRate(fuel: Fuel, diameter: number): number {
  const boiling = findRoot((T) => saturationPressure(fuel.saturation, T) - atm, 250, 500);
  const transfer = (SPECIFIC_HEAT * (REFERENCE_TEMPERATURE - boiling)) / fuel.latentHeat;
  const K = ((8 * CONDUCTIVITY) / (fuel.liquidDensity * SPECIFIC_HEAT)) * Math.log(1 + transfer);
  return (1.5 * K) / (diameter * diameter);
}
