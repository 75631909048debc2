import { withLambda } from '../../cycle/mixture-at.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { stepwiseRoot } from '../stepwise-root.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { solveHeld, withHeldPlenum } from './held-plenum.ts';

/** Highest gauge pressure that is tried, over ambient: beyond it no Roots blower works [-]. */
const HIGHEST = 3;
/** Accuracy of the pressure, over ambient [-]. */
const TOLERANCE = 1e-4;

/**
 * Plenum pressure at which the cylinders swallow a delivery ratio [Pa]: the demand curve read at that flow.
 *
 * The plenum is held at the temperature and purity it has in the solved point.
 *
 * @returns null where even three times ambient pressure above ambient does not do, or a held point has no answer
 */
export function* pressureToSwallow(
  model: Model,
  point: OperatingPoint,
  cycle: SolvedPoint,
  deliveryRatio: number,
): Study<number | null> {
  const held = withHeldPlenum(withLambda(model, cycle.engine.lambda));
  const ambient = model.engine.ambient.pressure;
  const { meanTemperature: temperature, meanPressure } = cycle.plenum;
  let near: SolvedStart | null = null;
  let lost = false;
  const excess = function* (pressure: number): Study<number> {
    const run = solveHeld(held, point, { pressure, temperature, purity: 1 }, near);
    const { result, next } = yield* doing('what the cylinders swallow', run);
    if (!result.converged) {
      lost = true;
      return 0;
    }
    near = next;
    return result.engine.deliveryRatio - deliveryRatio;
  };
  const known = new Map<number, number>();
  const look = function* (pressure: number): Study<number> {
    const value = yield* excess(pressure);
    known.set(pressure, value);
    return value;
  };
  // A bracket from the working point on, in steps of its gauge pressure.
  let [low, high] = [meanPressure, meanPressure];
  const first = yield* look(meanPressure);
  let step = Math.max(Math.abs(meanPressure - ambient), 0.002 * ambient);
  let value = first;
  while (!lost && value !== 0 && value < 0 === first < 0) {
    if (first < 0) {
      low = high;
      high += step;
      if (high > (1 + HIGHEST) * ambient) return null;
    } else {
      high = low;
      low -= step / 4;
      if (low < 0.5 * ambient) return null;
    }
    step *= first < 0 ? 1.6 : 1;
    value = yield* look(first < 0 ? high : low);
  }
  if (lost) return null;
  const found = yield* stepwiseRoot(excess, low, high, TOLERANCE * ambient, known);
  return lost ? null : found;
}
