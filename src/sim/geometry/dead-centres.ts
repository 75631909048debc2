import { findRoot } from '../numerics/find-root.ts';
import { minimize } from '../numerics/minimize.ts';
import { TURN } from '../units.ts';
import type { PistonMotion } from './crank-train.ts';

export interface DeadCentres {
  /** Pin angle, in the frame of the row, at the highest point; `bottomPin` lies within a turn after it [rad]. */
  readonly topPin: number;
  readonly bottomPin: number;
  readonly topHeight: number;
  readonly bottomHeight: number;
  /** How often the piston turns round in one turn of the crank: 2, unless the rods are absurd. */
  readonly reversals: number;
}

/** Half-degree samples to bracket extremes: they cannot lie closer together unless rods nearly lock. */
const SAMPLES = 720;

/**
 * Top and bottom dead centre: the roots of the exact ds/dtheta, bracketed by sampling a turn.
 *
 * Numerics: angles to about 1e-15 rad (round-off of the slope over its own slope).
 * Valid: for a motion whose rods go round; see `largestOffAxis`.
 */
export function deadCentres(motion: PistonMotion): DeadCentres {
  const slopeAt = (angle: number): number => {
    motion.evaluate(angle);
    return motion.slope;
  };
  const heightAt = (angle: number): number => {
    motion.evaluate(angle);
    return motion.height;
  };
  const step = TURN / SAMPLES;
  const start = motion.rods.axisAngle - 0.5 * step;
  let topPin = NaN;
  let topHeight = -Infinity;
  let bottomPin = NaN;
  let bottomHeight = Infinity;
  let reversals = 0;
  let rising = slopeAt(start) > 0;
  for (let i = 1; i <= SAMPLES; i++) {
    const stillRising = slopeAt(start + i * step) > 0;
    if (stillRising !== rising) {
      reversals++;
      const at = findRoot(slopeAt, start + (i - 1) * step, start + i * step);
      const height = heightAt(at);
      if (rising && height > topHeight) {
        topPin = at;
        topHeight = height;
      } else if (!rising && height < bottomHeight) {
        bottomPin = at;
        bottomHeight = height;
      }
    }
    rising = stillRising;
  }
  if (bottomPin < topPin) bottomPin += TURN;
  return { topPin, bottomPin, topHeight, bottomHeight, reversals };
}

/** How far the rod's lower pin swings off the cylinder axis at most [m]. The rod goes round if it is longer than that. */
export function largestOffAxis(motion: PistonMotion): number {
  const closeness = (angle: number): number => {
    motion.evaluate(angle);
    return -Math.abs(motion.offAxis);
  };
  const step = TURN / SAMPLES;
  let best = 0;
  for (let i = 1; i < SAMPLES; i++) if (closeness(i * step) < closeness(best * step)) best = i;
  return -minimize(closeness, (best - 1) * step, (best + 1) * step, 1e-8).value;
}
