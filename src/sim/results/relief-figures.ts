import type { CycleSystem } from '../cycle/system.ts';
import { TURN } from '../units.ts';
import type { PeriodTotals } from './period-totals.ts';
import type { ReliefFigures } from './point-result.ts';

/**
 * What the relief valve does over a recorded period; null without one. Definitions: docs/conventions.md.
 *
 * @param lifts     - at every point of the mesh; the last is the first of the next period
 * @param delivered - by the blowers, mean [kg/s]
 */
export function reliefFigures(
  system: CycleSystem,
  totals: PeriodTotals,
  lifts: Float64Array,
  delivered: number,
  turns: number,
): ReliefFigures | null {
  if (!system.relief) return null;
  const massFlow = (totals.massThrough(system.model.network.through.relief) * system.omega) / (TURN * turns);
  let openings = 0;
  for (let i = 1; i < lifts.length; i++) if (lifts[i - 1] === 0 && lifts[i] > 0) openings++;
  return {
    massFlow,
    share: delivered > 0 ? massFlow / delivered : 0,
    leastLift: Math.min(...lifts),
    greatestLift: Math.max(...lifts),
    openings: openings / turns,
  };
}
