import { findRoot } from '../numerics/find-root.ts';
import { TURN } from '../units.ts';
import type { TrainCylinder } from './solve-train.ts';

export interface Passes {
  /** Crank angle after the cylinder's own top dead centre on the way down and on the way up; down < up [rad]. */
  readonly down: number;
  readonly up: number;
}

/**
 * When the crown stands a given distance below its own top dead centre: on the way down and on the way up.
 *
 * @param cylinder - a solved piston
 * @param travel   - 0 < travel < stroke [m]
 *
 * Numerics: roots of the exact motion to about 1e-14 rad, bracketed by the dead centres. The accuracy falls with the
 * square root of the distance to a dead centre.
 */
export function crownPasses(cylinder: TrainCylinder, travel: number): Passes {
  const { motion, topPin, bottomPin, topHeight } = cylinder;
  const below = (pinAngle: number): number => {
    motion.evaluate(pinAngle);
    return topHeight - motion.height - travel;
  };
  return {
    down: findRoot(below, topPin, bottomPin) - topPin,
    up: findRoot(below, bottomPin, topPin + TURN) - topPin,
  };
}
