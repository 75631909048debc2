import { gasConductivity, gasViscosity } from './gas-transport.ts';

/**
 * Heat transfer coefficient between gas and cylinder walls.
 *
 *   h = a (k / B) Re^b,   Re = rho c_m B / mu
 *
 * @param a           - multiplier, 0.2-0.8; 0.26 typical of two-strokes, 0.49 of four-strokes [-]
 * @param b           - exponent, 0.7 [-]
 * @param bore        - B [m]
 * @param density     - rho, of the gas [kg/m^3]
 * @param temperature - mean of the gas [K]
 * @param pistonSpeed - c_m, mean [m/s]
 * @returns [W/(m^2 K)]
 *
 * Valid: mean over the walls, one gas zone. Published correlations differ threefold at one state: a is there to be calibrated.
 * Source: Annand, Proc. Instn Mech. Engrs 177:973, 1963; two-stroke multiplier as used by Blair 1996, ch. 4.
 */
export const annandCoefficient = (
  a: number,
  b: number,
  bore: number,
  density: number,
  temperature: number,
  pistonSpeed: number,
): number =>
  ((a * gasConductivity(temperature)) / bore) *
  Math.exp(b * Math.log((density * pistonSpeed * bore) / gasViscosity(temperature)));

/**
 * Radiation from gas to wall.
 *
 *   q = c (T^4 - T_w^4)
 *
 * @param c               - 0.075 sigma for spark ignition while burning and expanding [W/(m^2 K^4)]
 * @param temperature     - of the gas [K]
 * @param wallTemperature - [K]
 * @returns flux, gas to wall [W/m^2]
 *
 * Valid: c was fitted for burning and expansion; about 5 % of the heat. At the temperatures of scavenging the term is negligible
 * by itself, so it may stay on.
 * Source: Annand 1963.
 */
export function annandRadiation(c: number, temperature: number, wallTemperature: number): number {
  const hot = temperature * temperature;
  const wall = wallTemperature * wallTemperature;
  return c * (hot - wall) * (hot + wall);
}
