import type { Blower } from '../../engine.ts';
import { DRAWING_TEMPERATURE, blowerTemperatures, gapLoss } from '../rotors/heat-growth.ts';
import type { RotorGaps } from '../rotors/clearances.ts';

/** Share of a gap below which it does not close: what metal that touches would leave [-]. Numerical; reported, not hidden. */
export const LEAST_OPEN = 0.05;

/** A gap that may close with heat, as a straight line over the gas temperature in the plenum. */
export interface WarmGap {
  /** At 20 degrees Celsius in the gas and outside, film taken off [m]. */
  readonly cold: number;
  /** Lost at gas of 20 degrees [m], and per degree of the gas [m/K]. */
  readonly lost: number;
  readonly perKelvin: number;
}

/**
 * What is open of a gap.
 *
 *   g = (x + sqrt(x^2 + (2 e g0)^2)) / 2,   x = g0 - lost - perKelvin (T - 293.15 K)
 *
 * @param temperature - T of the gas in the plenum, which rotors take on [K]
 * @returns [m]; e = 0.05: at x = g0 0.25 % wider than x, and never closed
 */
export function openGap({ cold, lost, perKelvin }: WarmGap, temperature: number): number {
  const x = cold - lost - perKelvin * (temperature - DRAWING_TEMPERATURE);
  if (lost === 0 && perKelvin === 0) return x;
  const edge = 2 * LEAST_OPEN * cold;
  return 0.5 * (x + Math.sqrt(x * x + edge * edge));
}

/**
 * The gaps of a blower: closed in part by a film of oil or fuel, and, where the design says so, by heat.
 *
 * Rotors as hot as the gas in the plenum, casing half way to the air outside (`blowerTemperatures`), growth by `gapLoss`.
 *
 * @param ambient - air temperature [K]
 */
export function warmGaps(
  blower: Blower,
  filmShare: number,
  closeWithHeat: boolean,
  ambient: number,
): Record<keyof RotorGaps, WarmGap> {
  const { rotors, tipDiameter } = blower;
  const lossAt = (gas: number): RotorGaps => {
    const { rotor, casing } = blowerTemperatures(gas, gas, ambient);
    return gapLoss({
      tipDiameter,
      length: rotors.length,
      centreDistance: rotors.centreDistance,
      material: rotors.material,
      casingMaterial: rotors.casingMaterial,
      rotorTemperature: rotor,
      casingTemperature: casing,
    });
  };
  const cool = lossAt(DRAWING_TEMPERATURE);
  const warm = lossAt(DRAWING_TEMPERATURE + 100);
  const of = (key: keyof RotorGaps): WarmGap => ({
    cold: rotors.gaps[key] * (1 - filmShare),
    lost: closeWithHeat ? cool[key] : 0,
    perKelvin: closeWithHeat ? (warm[key] - cool[key]) / 100 : 0,
  });
  return { tip: of('tip'), mesh: of('mesh'), end: of('end') };
}
