import { atm, bar } from '../../../units.ts';

/** Between which the law was made: pressure that is not passed, above the start [Pa]; pressure at which the vent opens [Pa]. */
export const VENT_HOLDS = [0.1 * bar, 2 * bar] as const;
export const VENT_OPENS = [0.1 * bar, 0.5 * bar] as const;

/**
 * Deflagration index K_G = V^(1/3) (dp/dt)_max of quiescent vapour of petrol in air [Pa m/s]. Typical: propane 100, pentane 104,
 * methanol 75, ethanol 78 bar m/s; swirl multiplies it. Source: NFPA 68, Standard on Explosion Protection by Deflagration Venting, annex.
 */
export const USUAL_DEFLAGRATION_INDEX = 100 * bar;

export interface VentQuestion {
  /** [m^3] */
  readonly volume: number;
  /** Before the fire, absolute [Pa]. */
  readonly start: number;
  /** That is not to be passed, absolute [Pa]. */
  readonly holds: number;
  /** Above the start, at which the vent opens [Pa]. */
  readonly opens: number;
  /** K_G [Pa m/s]. */
  readonly index: number;
}

/**
 * Vent area that keeps a deflagration in one compact vessel below a pressure.
 *
 *   A = [ (0.1265 log10 K_G - 0.0567) p_r^-0.5817 + 0.1754 p_r^-0.5722 (p_s - 0.1) ] V^(2/3)     bar, m
 *   p_r = (holds - start) (start / 1 atm)^-1.5                        a vessel that starts above the atmosphere
 *
 * @returns [m^2]; null outside the law's range
 *
 * Valid: length below two diameters, p_r 0.1 to 2 bar, p_s 0.1 to 0.5 bar, K_G 50 to 550 bar m/s, measured on vessels from about a
 * tenth of a cubic metre up: for a plenum of a litre or two it is carried far down by the cube-root law. A light disc, no duct behind it.
 * Source: Bartknecht, Explosionsschutz, 1993; EN 14994:2007, isolated compact enclosures; exponent 1.5 for propane: NFPA 68, 2002.
 */
export function ventArea({ volume, start, holds, opens, index }: VentQuestion): number | null {
  const reduced = (holds - start) * (start / atm) ** -1.5;
  if (reduced < VENT_HOLDS[0] || reduced > VENT_HOLDS[1]) return null;
  if (opens < VENT_OPENS[0] || opens > VENT_OPENS[1] || reduced <= opens) return null;
  const pr = reduced / bar;
  const grown = (0.1265 * Math.log10(index / bar) - 0.0567) * pr ** -0.5817;
  const late = 0.1754 * pr ** -0.5722 * (opens / bar - 0.1);
  return (grown + late) * volume ** (2 / 3);
}

/**
 * Diameter of the disc that frees an area.
 *
 *   d = sqrt(4 A / pi)
 *
 * @param area - of the opening [m^2]
 * @returns [m]
 */
export const discDiameter = (area: number): number => Math.sqrt((4 * area) / Math.PI);
