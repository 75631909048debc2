import { gearRatio } from '../../blower/gear-train.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { evenModel } from './even-model.ts';

/** What the next step of the drive ratio brings. */
export interface StepGain {
  /** Rotor over crank speed, before and after one more tooth on the first driving wheel [-]. */
  readonly ratio: number;
  readonly nextRatio: number;
  readonly deliveryRatio: number;
  readonly chargingEfficiency: number;
  /** More brake power, the blower's own paid [W]. */
  readonly brakePower: number;
}

/**
 * Net gain of one more tooth on the first driving wheel, the ripple averaged in both: differences of two solved points.
 *
 * @param start - a stated neighbour with a period of one turn, or null
 * @returns null without gears, or where one of the points has no answer
 */
export function* oneMoreTooth(
  model: Model,
  point: OperatingPoint,
  start: SolvedStart | null = null,
): Study<StepGain | null> {
  const [first, ...rest] = model.engine.blower.gears;
  if (!first) return null;
  const more = gearRatio([{ ...first, driverTeeth: first.driverTeeth + 1 }, ...rest]);
  const nextRatio = more.numerator / more.denominator;
  const solved = function* (even: Model, from: SolvedStart | null) {
    return yield* doing('one more tooth', solve(even, point, { start: from }));
  };
  const now = yield* solved(evenModel(model), start);
  if (!now.result.converged) return null;
  const then = yield* solved(evenModel(model, nextRatio), now.next);
  if (!then.result.converged) return null;
  const gain = (pick: (engine: SolvedPoint['engine']) => number, a: SolvedPoint, b: SolvedPoint) =>
    pick(b.engine) - pick(a.engine);
  const [before, after] = [now.result, then.result];
  return {
    ratio: model.drive.ratio,
    nextRatio,
    deliveryRatio: gain((engine) => engine.deliveryRatio, before, after),
    chargingEfficiency: gain((engine) => engine.chargingEfficiency, before, after),
    brakePower: gain((engine) => engine.brakePower, before, after),
  };
}
