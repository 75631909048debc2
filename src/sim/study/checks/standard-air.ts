import { AIR } from '../../gas/air.ts';
import { breathedAir, vapourPressure } from '../../gas/moist-air.ts';
import { mbar } from '../../units.ts';

/**
 * Density of air, and of the dry air in it [kg/m^3].
 *
 *   rho_dry = (p - p_w) / (R_air T),   rho = p / (R T)         R of the moist air
 *
 * Valid: ideal gases. Source: Dalton's law.
 */
export function airDensity(
  pressure: number,
  temperature: number,
  humidity: number,
): { readonly whole: number; readonly dry: number } {
  const { gas } = breathedAir({ pressure, temperature, humidity });
  const dry = (pressure - vapourPressure(humidity, temperature)) / (AIR.gasConstant * temperature);
  return { dry, whole: pressure / (gas.gasConstant * temperature) };
}

/**
 * Factor that turns brake power measured, or modelled, in some air into what it would be in standard air: dry 990 mbar, 25 degrees.
 *
 *   C = 1.18 (990 / p_d) ((t + 273) / 298)^0.5 - 0.18         p_d dry air [mbar], t [degrees Celsius]
 *
 * @param pressure    - of the air, humidity included [Pa]
 * @param temperature - [K]
 * @param humidity    - relative [-]
 * @returns C [-]; corrected = C x uncorrected
 *
 * Valid: the code allows C from 0.93 to 1.07 at full throttle; it takes a mechanical efficiency of 85 % for granted, which a blown
 * engine with its blower may not have. Source: SAE J1349, June 1990; set out in Sodre & Soares, J. Braz. Soc. Mech. Sci. & Eng. 25, 2003.
 */
export function powerCorrection(pressure: number, temperature: number, humidity: number): number {
  const dry = (pressure - vapourPressure(humidity, temperature)) / mbar;
  return 1.18 * (990 / dry) * Math.sqrt(temperature / 298) - 0.18;
}

/** Range of the correction that the code itself allows [-]. */
export const CORRECTION_RANGE = [0.93, 1.07] as const;
