import { bar } from '../units.ts';

/**
 * Heat transfer coefficient between gas and cylinder walls.
 *
 *   h = f 130 V^-0.06 p^0.8 T^-0.4 (c_m + 1.4)^0.8        p in bar
 *
 * @param f           - multiplier, 1 as published [-]
 * @param volume      - V, present volume of the cylinder [m^3]
 * @param pressure    - p [Pa]
 * @param temperature - T, mean of the gas [K]
 * @param pistonSpeed - c_m, mean [m/s]
 * @returns [W/(m^2 K)]
 *
 * Valid: mean over the walls, radiation included. From diesels of about a litre a cylinder; below 0.1 l it is an extrapolation
 * and likely too much.
 * Source: Hohenberg, SAE 790825, 1979.
 */
export const hohenbergCoefficient = (
  f: number,
  volume: number,
  pressure: number,
  temperature: number,
  pistonSpeed: number,
): number =>
  f * 130 * volume ** -0.06 * ((pressure / bar) * (pistonSpeed + 1.4)) ** 0.8 * temperature ** -0.4;
