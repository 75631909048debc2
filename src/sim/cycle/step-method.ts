import type { RosenbrockW } from '../numerics/rosenbrock-w.ts';
import { ros2, ros34pw2 } from '../numerics/rosenbrock-w.ts';
import { deg } from '../units.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';

export interface StepMethod {
  readonly method: RosenbrockW;
  /** Error allowed per step, relative to every node's mass and thermal energy [-]. */
  readonly tolerance: number;
  /** How many times that is allowed while the state is still far from periodic [-]. */
  readonly coarse: number;
  /** Longest step [rad]. */
  readonly longest: number;
  /**
   * Parts that every step of the final mesh is cut into. In slow, stiff phases the estimate sees pressures that hardly move,
   * not the error of the mixing that goes on.
   */
  readonly parts: number;
}

/** Exchange rate above which the four-stage method is the better bargain [1/rad]. */
const STIFF_FROM = 7;

/**
 * Which method steps a point. Where gas crosses the windows many times faster than the crank turns, pressures follow
 * the pistons at once, and a method loses order unless it is stiffly accurate: then four stages of ROS34PW2 win over
 * two of ROS2. Figures: docs/implementation-notes.md.
 */
export function stepMethod(model: Model, point: OperatingPoint): StepMethod {
  return exchangeRate(model, point) > STIFF_FROM
    ? { method: ros34pw2, tolerance: 1e-4, coarse: 5, longest: deg, parts: 2 }
    : { method: ros2, tolerance: 1.5e-3, coarse: 20, longest: 2 * deg, parts: 1 };
}

/**
 * How fast a passage empties through its fully open windows, per radian of the crank:
 *
 *   CdA sqrt(R T) / (V omega)      at ambient R T
 */
export function exchangeRate(model: Model, point: OperatingPoint): number {
  const { engine, geometry, set } = model;
  const speed = Math.sqrt(set.gasConstants[0] * engine.ambient.temperature);
  const widest = Math.max(...geometry.cylinders.map((c) => c.transfer.fullArea));
  return (engine.windows.transferDischarge.forward * widest * speed) / (engine.passages.volume * point.speed);
}
