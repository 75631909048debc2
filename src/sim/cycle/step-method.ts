import type { RosenbrockW } from '../numerics/rosenbrock-w.ts';
import { ros2, ros34pw2 } from '../numerics/rosenbrock-w.ts';
import { deg } from '../units.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';

export interface Accuracy {
  /** Error allowed per step, relative to every node's mass and thermal energy [-]. */
  readonly tolerance: number;
  /** Longest step [rad]. */
  readonly longest: number;
}

export interface StepMethod {
  readonly method: RosenbrockW;
  readonly fine: Accuracy;
  /** While the state is still far from periodic. */
  readonly coarse: Accuracy;
}

/** Exchange rate above which the four-stage method is the better bargain [1/rad]. */
const STIFF_FROM = 7.5;

/**
 * Which method steps a point, and how finely. Where gas crosses the windows many times faster than the crank turns, pressures
 * follow the pistons at once, and a method loses order unless it is stiffly accurate: then four stages of ROS34PW2 win over
 * two of ROS2, and the error a step shows is less and less of the error it makes, so that less may be allowed.
 * Figures: docs/implementation-notes.md.
 */
export function stepMethod(model: Model, point: OperatingPoint): StepMethod {
  const rate = exchangeRate(model, point);
  // Every event refines the mesh for all cylinders: the fewer there are, the shorter the longest step has to be.
  const longest = Math.min(3, 1.5 + 0.2 * model.geometry.cylinders.length) * deg;
  return rate > STIFF_FROM
    ? {
        method: ros34pw2,
        fine: {
          tolerance: 6e-4 * Math.min(1, 10 / rate) ** 0.6,
          longest: Math.min(longest, 2.5 * deg * Math.min(1, 17 / rate) ** 0.85),
        },
        coarse: {
          tolerance: 2e-3 * Math.min(1, 25 / rate),
          longest: 5 * deg * Math.min(1, 17 / rate) ** 0.85,
        },
      }
    : {
        method: ros2,
        fine: { tolerance: 4e-3 * Math.min(1, 5 / rate), longest },
        coarse: { tolerance: 4e-2, longest: 6 * deg },
      };
}

/** Least share of the swept volume that a blower is taken to displace [-]. */
const LEAST_DISPLACED = 0.3;

/**
 * How fast a passage empties through its fully open windows, per radian of the crank:
 *
 *   CdA sqrt(R T) / (V omega s)      at ambient R T
 *
 * s: volume displaced by the blowers over volume swept by the pistons, 0.3 to 1: what little flows needs little pressure, and
 * so answers to it more.
 */
export function exchangeRate(model: Model, point: OperatingPoint): number {
  const { engine, geometry, set, drive } = model;
  const { blower } = engine;
  const speed = Math.sqrt(set.gasConstants[0] * engine.ambient.temperature);
  const widest = Math.max(...geometry.cylinders.map((c) => c.transfer.fullArea));
  const displaced = (blower.count * blower.displacement * drive.ratio) / geometry.sweptVolume;
  const share = Math.min(1, Math.max(LEAST_DISPLACED, displaced));
  return (
    (engine.windows.transferDischarge.forward * widest * speed) /
    (engine.passages.volume * point.speed * share)
  );
}
