import type { Engine } from '../sim/index.ts';
import { rpm } from '../sim/units.ts';

/**
 * The speeds at which a range is worked out [rad/s]: cranking, then even steps from the least to the greatest wanted
 * speed, the step a round number of rpm that makes about `count` of them.
 */
export function sweepSpeeds(wanted: Engine['wanted'], count: number): number[] {
  const low_rpm = wanted.minSpeed / rpm;
  const high_rpm = wanted.maxSpeed / rpm;
  const rough = (high_rpm - low_rpm) / Math.max(1, count - 1);
  const step_rpm = [50, 100, 250, 500, 1000, 2000].find((step) => step >= 0.8 * rough) ?? rough;
  const speeds_rpm = [wanted.crankingSpeed / rpm, low_rpm];
  for (
    let next = step_rpm * Math.ceil((low_rpm + 0.25 * step_rpm) / step_rpm);
    next < high_rpm - 0.25 * step_rpm;
    next += step_rpm
  ) {
    speeds_rpm.push(next);
  }
  speeds_rpm.push(high_rpm);
  return [...new Set(speeds_rpm)].sort((a, b) => a - b).map((speed_rpm) => speed_rpm * rpm);
}
