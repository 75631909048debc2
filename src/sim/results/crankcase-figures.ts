import type { CycleSystem } from '../cycle/system.ts';
import { timeMean } from '../numerics/time-mean.ts';
import type { PeriodTotals } from './period-totals.ts';
import type { CrankcaseFigures, GasFigures, Traces } from './point-result.ts';

/**
 * Figures of the crankcase; null where it takes no part.
 *
 *   pumping power = - sum over the period of p_case dV_case / its time      p absolute [Pa]
 *
 * It belongs to the crank like the cylinders' work: of an enclosed gas that exchanges no heat it would be nothing, so it measures what
 * breather, rings and walls cost.
 */
export function crankcaseFigures(
  { model, undersideWork }: CycleSystem,
  totals: PeriodTotals,
  { angle, crankcase }: Traces,
  gas: (node: number) => GasFigures,
  perSecond: number,
): CrankcaseFigures | null {
  if (!undersideWork || !crankcase) return null;
  const { at, through } = model.network;
  const { volume, purity } = crankcase;
  return {
    ...gas(at.crankcase),
    volumeSwing: Math.max(...volume) - Math.min(...volume),
    pumpingPower: -totals.sum(undersideWork) * perSecond,
    blowBy: through.blowBys.reduce((sum, edge) => sum + totals.massThrough(edge), 0) * perSecond,
    breathed: through.breather < 0 ? 0 : totals.massThrough(through.breather) * perSecond,
    purity: timeMean(angle, purity),
  };
}
