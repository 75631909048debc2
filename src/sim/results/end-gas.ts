import type { Constituent } from '../gas/constituent.ts';
import { specificHeat } from '../gas/polynomial.ts';
import { intervalOf } from '../numerics/interpolate.ts';

/** Unburned gas of one cylinder from trapping until it no longer counts: what knock is counted from. */
export interface EndGas {
  /** From trapping [s]. */
  readonly times: Float64Array;
  /** [Pa] */
  readonly pressures: Float64Array;
  /** [K] */
  readonly temperatures: Float64Array;
}

/** Crank angles of one turn's events, rising; they may lie beyond the recorded period, which repeats [rad]. */
export interface EndGasSpan {
  readonly trapped: number;
  /** Burning begins: from here the unburned gas goes its own way. */
  readonly burning: number;
  readonly ends: number;
}

/** A recorded period of a cylinder: its mesh from 0 to its length [rad], pressure [Pa] and temperature [K] there. */
export interface CylinderPeriod {
  readonly angle: Float64Array;
  readonly pressure: Float64Array;
  readonly temperature: Float64Array;
}

/** Parts of a gas and their mass fractions [-]. */
export type Mixture = readonly { readonly gas: Constituent; readonly share: number }[];

/**
 * Follows the end gas of a cylinder.
 *
 *   before burning: the cylinder's own temperature;   from there: dT / T = (R / cp(T)) dp / p     (isentropic)
 *
 * Heat that the end gas loses to the walls, and heat that the flame sends ahead, are left out; they work against each other.
 * Numerics: cp at the mean of both ends of every stretch of the mesh; straight lines between the points of the mesh.
 *
 * @param mixture - of the trapped charge
 * @param speed   - of the crank [rad/s]
 */
export function followEndGas(
  { angle, pressure, temperature }: CylinderPeriod,
  mixture: Mixture,
  { trapped, burning, ends }: EndGasSpan,
  speed: number,
): EndGas {
  const length = angle[angle.length - 1];
  const stops = [trapped, burning, ends];
  for (let k = Math.floor(trapped / length); k * length < ends; k++)
    for (const each of angle.subarray(1)) {
      const theta = each + k * length;
      if (theta > trapped && theta < ends && theta !== burning) stops.push(theta);
    }
  stops.sort((a, b) => a - b);

  const pressures = new Float64Array(stops.length);
  const temperatures = new Float64Array(stops.length);
  stops.forEach((theta, k) => {
    const within = theta - length * Math.floor(theta / length);
    const i = intervalOf(angle, within);
    const share = (within - angle[i]) / (angle[i + 1] - angle[i]);
    const between = (column: Float64Array): number => column[i] + share * (column[i + 1] - column[i]);
    pressures[k] = between(pressure);
    temperatures[k] =
      theta > burning
        ? squeezed(mixture, temperatures[k - 1], pressures[k] / pressures[k - 1])
        : between(temperature);
  });
  return { times: Float64Array.from(stops, (theta) => (theta - trapped) / speed), pressures, temperatures };
}

/** Temperature after a small isentropic change of pressure [K]. */
export function squeezed(mixture: Mixture, T: number, ratio: number): number {
  const total = (of: (gas: Constituent) => number): number =>
    mixture.reduce((sum, { gas, share }) => sum + share * of(gas), 0);
  const rise = total((gas) => gas.gasConstant) * Math.log(ratio);
  const at = (middle: number): number => T * Math.exp(rise / total((gas) => specificHeat(gas, middle)));
  return at(0.5 * (T + at(T)));
}
