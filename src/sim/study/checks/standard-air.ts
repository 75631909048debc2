import { AIR } from '../../gas/air.ts';
import { SPECIES, speciesConstituent } from '../../gas/species.ts';
import { atm, mbar } from '../../units.ts';

/**
 * The standard atmosphere at a height.
 *
 *   T = 288.15 - 0.0065 h,   p = 101325 (T / 288.15)^5.25588
 *
 * @param height - h above sea level, -2000 to 11 000 [m]
 * @returns pressure [Pa], temperature [K]
 *
 * Source: ISO 2533:1975.
 */
export function standardAtmosphere(height: number): { pressure: number; temperature: number } {
  const temperature = 288.15 - 0.0065 * height;
  return { temperature, pressure: atm * (temperature / 288.15) ** 5.25588 };
}

/**
 * Pressure of water vapour in air [Pa].
 *
 *   p_w = phi 611.2 exp(17.62 t / (243.12 + t))       t [degrees Celsius]
 *
 * @param humidity    - phi, relative, 0 to 1 [-]
 * @param temperature - [K]
 *
 * Valid: -45 to 60 degrees Celsius, within 0.6 %. Source: Magnus form of Sonntag, Z. Meteorol. 70, 1990.
 */
export function vapourPressure(humidity: number, temperature: number): number {
  const t = temperature - 273.15;
  return humidity * 611.2 * Math.exp((17.62 * t) / (243.12 + t));
}

const STEAM_GAS_CONSTANT = speciesConstituent(SPECIES.H2O).gasConstant;

/**
 * Density of air, and of the dry air in it [kg/m^3].
 *
 *   rho_dry = (p - p_w) / (R_air T),   rho = rho_dry + p_w / (R_steam T)
 *
 * Valid: ideal gases. Source: Dalton's law.
 */
export function airDensity(
  pressure: number,
  temperature: number,
  humidity: number,
): { readonly whole: number; readonly dry: number } {
  const steam = vapourPressure(humidity, temperature);
  const dry = (pressure - steam) / (AIR.gasConstant * temperature);
  return { dry, whole: dry + steam / (STEAM_GAS_CONSTANT * temperature) };
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
