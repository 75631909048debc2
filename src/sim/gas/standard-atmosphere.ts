import { atm } from '../units.ts';

const SEA_LEVEL_TEMPERATURE = 288.15;
const LAPSE = 0.0065;
const EXPONENT = 5.25588;

/**
 * The standard atmosphere at a height.
 *
 *   T = 288.15 - 0.0065 h,   p = 101325 (T / 288.15)^5.25588
 *
 * @param height - h, geopotential, above sea level, -2000 to 11 000 [m]
 * @returns pressure [Pa], temperature [K]
 *
 * Source: ISO 2533:1975.
 */
export function standardAtmosphere(height: number): {
  readonly pressure: number;
  readonly temperature: number;
} {
  const temperature = SEA_LEVEL_TEMPERATURE - LAPSE * height;
  return { temperature, pressure: atm * (temperature / SEA_LEVEL_TEMPERATURE) ** EXPONENT };
}

/** Height at which the standard atmosphere has a pressure [m], the inverse of the above. */
export const standardHeight = (pressure: number): number =>
  (SEA_LEVEL_TEMPERATURE / LAPSE) * (1 - (pressure / atm) ** (1 / EXPONENT));
