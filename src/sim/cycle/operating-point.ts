import { rpm } from '../units.ts';

/** Where the engine runs. */
export interface OperatingPoint {
  /** Crank speed [rad/s]. */
  readonly speed: number;
  /** Throttle, 0 closed to 1 open: share of the plate's swing or the slide's lift [-]. */
  readonly throttle: number;
}

/** Speeds the model is meant for [rad/s]: 150 to 20 000 rpm. */
export const MIN_SPEED = 150 * rpm;
export const MAX_SPEED = 20_000 * rpm;
