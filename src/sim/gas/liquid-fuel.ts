import { THERMOCHEMICAL_TEMPERATURE } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import { sumElements } from './elements.ts';
import type { Fuel } from './fuel.ts';
import { liquidEnthalpy } from './fuel.ts';

/**
 * Liquid fuel that is carried along with the gas: mass and enthalpy, but no pressure and no volume.
 *
 *   R = 0,   u = h = h_liquid(298.15 K) + c (T - 298.15 K)
 *
 * Valid: drops as warm and as fast as the gas round them; they take a thousandth of its volume.
 */
export function liquidFuel(fuel: Fuel): Constituent {
  const c = fuel.liquidSpecificHeat;
  const a6 = liquidEnthalpy(fuel, THERMOCHEMICAL_TEMPERATURE) / c - THERMOCHEMICAL_TEMPERATURE;
  return {
    name: `liquid ${fuel.name}`,
    gasConstant: 0,
    scale: c,
    breaks: [],
    pieces: [[1, 0, 0, 0, 0, a6, 0]],
    elements: sumElements([{ weight: 1 / fuel.molarMass, of: fuel.atoms }]),
  };
}
