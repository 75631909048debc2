import { atm } from '../units.ts';

/** How soon end gas lights by itself: the constants of the delay, the gas that counts, and what the fuel is worth. */
export interface KnockLaw {
  /** Delay at octane 100, 1 atm and infinite temperature [s]. */
  readonly delayFactor: number;
  readonly octaneExponent: number;
  readonly pressureExponent: number;
  /** Activation temperature [K]. */
  readonly activationTemperature: number;
  /** Share burned from which what is left no longer counts as end gas [-]. */
  readonly lastBurnedShare: number;
  /** Where the effective octane number stands between motor (0) and research (1) [-]. */
  readonly researchWeight: number;
  /** Added to the fuel's octane number for what the law does not know: hot spots, carbon, squish [-]. */
  readonly octaneOffset: number;
}

/** Octane numbers that the delay was fitted over [-]. */
export const FITTED_OCTANES = [80, 100] as const;

/**
 * Time in which unburned petrol and air at a steady state light by themselves [s].
 *
 *   tau = A (ON / 100)^a (p / 1 atm)^-n exp(B / T),   A 17.68 ms, a 3.402, n 1.7, B 3800 K
 *
 * @param pressure    - [Pa]
 * @param temperature - of the unburned gas [K]
 * @param octane      - effective octane number [-]
 *
 * Valid: primary reference fuels and petrol of octane 80 to 100, engine-like states of 600-1000 K; alcohols lie outside the fit,
 * and so does the two-stage behaviour below 700 K. The scatter between engines is several octane numbers.
 * Source: Douaud & Eyzat, SAE 780080, 1978; as printed in Heywood 1988, eq. 9.67.
 */
export const ignitionDelay = (law: KnockLaw, pressure: number, temperature: number, octane: number): number =>
  law.delayFactor *
  (octane / 100) ** law.octaneExponent *
  (pressure / atm) ** -law.pressureExponent *
  Math.exp(law.activationTemperature / temperature);

/**
 * Livengood-Wu integral: share of the delay that a changing state has used up; end gas lights where it reaches 1 [-].
 *
 *   integral of dt / tau(p, T)        by trapezia over the times given
 *
 * @param times        - rising [s]
 * @param pressures    - [Pa]; same length
 * @param temperatures - of the unburned gas [K]; same length
 *
 * Valid: where the chemistry has one stage. Source: Livengood & Wu, 5th Symposium (International) on Combustion, 1955, 347-356.
 */
export function knockIntegral(
  law: KnockLaw,
  octane: number,
  times: ArrayLike<number>,
  pressures: ArrayLike<number>,
  temperatures: ArrayLike<number>,
): number {
  let integral = 0;
  let before = 0;
  for (let i = 0; i < times.length; i++) {
    const rate = 1 / ignitionDelay(law, pressures[i]!, temperatures[i]!, octane);
    if (i > 0) integral += 0.5 * (rate + before) * (times[i]! - times[i - 1]!);
    before = rate;
  }
  return integral;
}

/**
 * Octane number with which the integral would just reach 1 [-]. Since tau goes with a power of the octane number,
 *
 *   ON_needed = ON integral^(1/a)
 */
export const octaneNeeded = (law: KnockLaw, octane: number, integral: number): number =>
  octane * integral ** (1 / law.octaneExponent);

/** Effective octane number of a fuel in an engine [-]: MON + weight (RON - MON) + offset. */
export const effectiveOctane = (
  law: KnockLaw,
  fuel: { readonly ron: number; readonly mon: number },
): number => fuel.mon + law.researchWeight * (fuel.ron - fuel.mon) + law.octaneOffset;
