import type { Friction } from '../engine.ts';
import { rpm, TURN } from '../units.ts';
import { fmep } from './fmep.ts';

/** Mean effective pressures [Pa]; their sum is what friction and accessories cost. */
export interface FrictionParts {
  readonly rings: number;
  readonly bearings: number;
  readonly windage: number;
  readonly oilPump: number;
  readonly starter: number;
}

/** Pa for a metre of stroke and a turn a minute. */
const BLAIR = 105;

/**
 * Friction of a two-stroke on rolling bearings.
 *
 *   fmep = 105 S n        S stroke [m], n [1/min]; the same as 3150 Pa s/m times the mean piston speed
 *
 * @param stroke - [m]
 * @param speed  - of the crank [rad/s]
 * @returns [Pa]
 *
 * Valid: small two-strokes with rolling bearings, warm, at full load; no term for pressure.
 * Source: Blair, Design and Simulation of Two-Stroke Engines, 1996, sec. 5.4.
 */
export const rollingFmep = (stroke: number, speed: number): number => BLAIR * stroke * (speed / rpm);

/**
 * What friction and accessories cost, part by part.
 *
 *   running gear = four terms of fmep.ts, or 105 S n;   bearings, windage: stated shares of it, rings and pistons the rest
 *   oil pump, starter: 2 pi T / V_s
 *
 * @param peakPressure - mean over the cylinders [Pa]
 * @param stroke       - [m]
 * @param speed        - of the crank [rad/s]
 * @param sweptVolume  - of all cylinders [m^3]
 *
 * Valid: the shares divide a sum that was measured whole; they are typical and move nothing but the division.
 */
export function frictionParts(
  friction: Friction,
  peakPressure: number,
  stroke: number,
  speed: number,
  sweptVolume: number,
): FrictionParts {
  const gear =
    friction.law === 'four terms'
      ? fmep(friction, peakPressure, (2 * stroke * speed) / TURN, speed)
      : rollingFmep(stroke, speed);
  const bearings = friction.bearingShare * gear;
  const windage = friction.windageShare * gear;
  return {
    rings: gear - bearings - windage,
    bearings,
    windage,
    oilPump: (TURN * friction.oilPumpTorque) / sweptVolume,
    starter: (TURN * friction.starterTorque) / sweptVolume,
  };
}
