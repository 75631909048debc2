import type { CycleSystem } from '../cycle/system.ts';
import { enthalpy } from '../gas/polynomial.ts';
import type { PeriodTotals } from './period-totals.ts';
import type { BypassFigures } from './point-result.ts';

/**
 * What a bypass carries over a recorded period; null without one. Definitions: docs/conventions.md.
 *
 * @param delivered - by the blowers, mean [kg/s]
 * @param perSecond - periods a second
 */
export function bypassFigures(
  { model, gas }: CycleSystem,
  totals: PeriodTotals,
  delivered: number,
  perSecond: number,
): BypassFigures | null {
  const { bypass } = model.network.through;
  if (bypass < 0) return null;
  const { temperature } = model.engine.ambient;
  const atAmbient = gas.set.constituents.reduce(
    (sum, each, k) => sum + totals.through(bypass, k) * enthalpy(each, temperature),
    0,
  );
  const massFlow = totals.massThrough(bypass) * perSecond;
  return {
    massFlow,
    share: delivered > 0 ? massFlow / delivered : 0,
    heat: (totals.enthalpyThrough(bypass) - atAmbient) * perSecond,
  };
}
