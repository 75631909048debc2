import type { WorkCurve } from './work-curve.ts';
import { angleOfPart, meanTorque } from './work-curve.ts';

/** What is to be sped up and slowed down, all at the crank [kg m^2]. */
export interface Inertias {
  readonly flywheel: number;
  /** Mean over the turn of rods, pistons and throws. */
  readonly rods: number;
  readonly load: number;
  /** Of all blowers. */
  readonly rotors: number;
  readonly total: number;
}

export interface SpeedFluctuation {
  readonly inertias: Inertias;
  /** Highest less lowest of the work beyond the mean [J]. */
  readonly energySwing: number;
  /** Highest less lowest speed over the mean [-]. */
  readonly coefficient: number;
  /** Speed over its mean at the ends of equal parts of the period [-]. */
  readonly relativeSpeed: Float64Array;
}

/**
 * How far the speed swings within a turn: energy method.
 *
 *   J omega d omega / d theta = T - T_mean,   Delta E = max - min of integral (T - T_mean) d theta,   delta = Delta E / (J omega^2)
 *
 * @param work     - of the total torque at the crank [J]
 * @param inertias - J [kg m^2]
 * @param speed    - omega, mean [rad/s]
 *
 * Valid: delta << 1 (a tenth is too much: then the inertia torque is no longer that of constant speed); load torque even over the turn;
 * rigid shafts, so no torsional vibration, which near a natural frequency goes far beyond this.
 * Source: Shigley & Mischke, Mechanical Engineering Design, 5th ed. 1989, sec. 16-10 (flywheels).
 */
export function speedFluctuation(work: WorkCurve, inertias: Inertias, speed: number): SpeedFluctuation {
  const mean = meanTorque(work);
  const beyond = work.map((each, part) => each - mean * angleOfPart(part));
  const level = beyond.subarray(1).reduce((sum, each) => sum + each, 0) / (beyond.length - 1);
  const perEnergy = 1 / (inertias.total * speed * speed);
  const energySwing = Math.max(...beyond) - Math.min(...beyond);
  return {
    inertias,
    energySwing,
    coefficient: energySwing * perEnergy,
    relativeSpeed: beyond.map((each) => 1 + (each - level) * perEnergy),
  };
}
