import { gasConductivity, gasViscosity } from './gas-transport.ts';

/** Of air and of burned gas, nearly constant [-]. */
export const PRANDTL = 0.7;
/** Developed laminar flow in a round tube at constant wall temperature [-]. */
const LAMINAR = 3.66;
const LAMINAR_UP_TO = 2300;
const TURBULENT_FROM = 4000;

/**
 * Nusselt number of a smooth tube.
 *
 *   laminar, Re <= 2300:    3.66
 *   turbulent, Re >= 4000:  (f/8) (Re - 1000) Pr / (1 + 12.7 sqrt(f/8) (Pr^(2/3) - 1)),   f = (0.79 ln Re - 1.64)^-2
 *   between:                the second weighted in by x^2 (3 - 2 x), x = (Re - 2300) / 1700
 *
 * @param Re - Reynolds number on the hydraulic diameter [-]
 * @param Pr - Prandtl number, 0.5-2000 [-]
 * @returns [-]
 *
 * Valid: developed, steady flow, Re to 5e6. Pulsating flow and bends transfer more: `enhancement` of a wall stands for that.
 * Numerics: value and slope continuous; rising.
 * Source: Gnielinski, Int. Chem. Eng. 16:359, 1976, friction factor of Petukhov 1970; Incropera & DeWitt 2002, sec. 8.4-8.5.
 */
export function tubeNusselt(Re: number, Pr: number): number {
  if (Re <= LAMINAR_UP_TO) return LAMINAR;
  const eighth = 1 / (8 * (0.79 * Math.log(Re) - 1.64) ** 2);
  const turbulent = (eighth * (Re - 1000) * Pr) / (1 + 12.7 * Math.sqrt(eighth) * (Math.cbrt(Pr) ** 2 - 1));
  if (Re >= TURBULENT_FROM) return turbulent;
  const x = (Re - LAMINAR_UP_TO) / (TURBULENT_FROM - LAMINAR_UP_TO);
  return LAMINAR + x * x * (3 - 2 * x) * (turbulent - LAMINAR);
}

/**
 * Heat transfer coefficient of gas along a wall: enhancement Nu k / D.
 *
 * @param hydraulicDiameter - D, four areas over the perimeter [m]
 * @param massFlux          - magnitude, mass flow over cross-section [kg/(s m^2)]
 * @param temperature       - of the gas [K]
 * @param enhancement       - multiplier on the smooth-tube value [-]
 * @returns [W/(m^2 K)]
 */
export const tubeCoefficient = (
  hydraulicDiameter: number,
  massFlux: number,
  temperature: number,
  enhancement: number,
): number =>
  (enhancement *
    tubeNusselt((massFlux * hydraulicDiameter) / gasViscosity(temperature), PRANDTL) *
    gasConductivity(temperature)) /
  hydraulicDiameter;
