import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { pressureToSwallow } from '../supply/pressure-to-swallow.ts';
import { airFigures } from './air-figures.ts';
import type { AirFigures } from './air-figures.ts';
import { airLimit } from './air-limit.ts';
import type { AirLimit } from './air-limit.ts';

/** What stands in the way of the air at a speed. */
export interface AirLimitFound {
  readonly speed: number;
  readonly figures: AirFigures;
  readonly limit: AirLimit;
  /** Plenum pressure at which the cylinders would take what is wanted [Pa]; null where none does. */
  readonly swallows: number | null;
}

/** The limit at a point that is solved already. */
export function* limitAt(
  model: Model,
  point: OperatingPoint,
  cycle: SolvedPoint,
  next: SolvedStart | null,
): Study<AirLimitFound> {
  const limit = yield* airLimit(model, point, cycle, next);
  const swallows = yield* pressureToSwallow(model, point, cycle, model.engine.wanted.deliveryRatio);
  return { speed: point.speed, figures: airFigures(model, cycle), limit, swallows };
}

/** Solves a point and finds what limits its air: see `airLimit` and `pressureToSwallow`. */
export function* findLimit(model: Model, point: OperatingPoint): Study<Outcome<AirLimitFound>> {
  const { result, next } = yield* doing('the point', solve(model, point));
  if (!result.converged) return failure([{ path: '', message: result.reason }]);
  return success(yield* limitAt(model, point, result, next));
}
