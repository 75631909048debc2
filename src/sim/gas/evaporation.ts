import { findRoot } from '../numerics/find-root.ts';
import { AIR } from './air.ts';
import type { Constituent } from './constituent.ts';
import { molarMassOf } from './constituent.ts';
import type { Fuel } from './fuel.ts';
import { liquidEnthalpy } from './fuel.ts';
import { enthalpy } from './polynomial.ts';
import { saturationPressure } from './saturation.ts';

/** Air and fuel after they have met. */
export interface Evaporation {
  /** Of air, vapour and remaining liquid alike [K]. */
  readonly temperature: number;
  /** Share of the fuel that the air's own heat has evaporated [-]. */
  readonly evaporatedShare: number;
  /** Whether saturation, not the wanted share, set it. */
  readonly saturated: boolean;
  /**
   * Heat that the walls must give so that the rest is vapour too at this temperature [J/kg of fuel]. With it the charge's
   * enthalpy as all vapour equals what came in: h_air(T_air) AFR + h_liquid(T_air) + this.
   */
  readonly heatFromWalls: number;
}

/** Range in which the mixture's temperature is sought [K]. */
const COLDEST = 150;

/**
 * Liquid fuel sprayed into air: adiabatic, at constant pressure, in equilibrium.
 *
 *   AFR h_air(T) + e h_vapour(T) + (1 - e) h_liquid(T) = AFR h_air(T_air) + h_liquid(T_air)
 *   e = min( wanted,  volatile share,  saturation:  n_vapour / (n_vapour + n_air) = p_sat(T) / p )
 *
 * @param fuel           - see fuel.ts; fed at the air's temperature
 * @param airFuelRatio   - air over fuel by mass [-]
 * @param airTemperature - before mixing [K]
 * @param pressure       - of the mixture [Pa]
 * @param wantedShare    - share of the fuel that would evaporate if saturation allowed, 0..1 [-]
 * @param air            - as it is breathed
 *
 * Valid: air above 150 K plus the cooling. The share is an input because time, droplet size and wall films limit it before
 * equilibrium does. Numerics: the left side rises with T, so the root is single; it is bracketed from 150 K to the air's temperature.
 * Source: first law with Raoult's and Antoine's laws; Heywood 1988, sec. 6.2.4 and 7.2.
 */
export function evaporateInto(
  fuel: Fuel,
  airFuelRatio: number,
  airTemperature: number,
  pressure: number,
  wantedShare: number,
  air: Constituent = AIR,
): Evaporation {
  const volatileShare = 1 - fuel.involatileShare;
  const unsaturatedLimit = Math.min(wantedShare, volatileShare);
  const airMoles = airFuelRatio / molarMassOf(air);
  const saturationLimit = (T: number) => {
    const psat = saturationPressure(fuel.saturation, T);
    if (psat >= pressure) return volatileShare;
    return ((psat / (pressure - psat)) * airMoles * volatileShare) / fuel.volatileMoles;
  };
  const shareAt = (T: number) => Math.min(unsaturatedLimit, saturationLimit(T));
  const before = airFuelRatio * enthalpy(air, airTemperature) + liquidEnthalpy(fuel, airTemperature);
  const excess = (T: number) => {
    const e = shareAt(T);
    const after =
      airFuelRatio * enthalpy(air, T) + e * enthalpy(fuel.vapour, T) + (1 - e) * liquidEnthalpy(fuel, T);
    return after - before;
  };
  const temperature = unsaturatedLimit > 0 ? findRoot(excess, COLDEST, airTemperature) : airTemperature;
  const evaporatedShare = shareAt(temperature);
  return {
    temperature,
    evaporatedShare,
    saturated: evaporatedShare < unsaturatedLimit,
    heatFromWalls:
      (1 - evaporatedShare) * (enthalpy(fuel.vapour, temperature) - liquidEnthalpy(fuel, temperature)),
  };
}
