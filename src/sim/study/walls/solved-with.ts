import { buildModel } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import { solve } from '../../cycle/solve.ts';
import type { Cooling, Engine } from '../../engine.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import type { Study } from '../study-step.ts';
import { doing } from '../study-step.ts';

/** An engine whose wall temperatures are worked out, with some of its cooling changed. */
export const coolingChanged = (engine: Engine, changes: Partial<Cooling>): Engine => ({
  ...engine,
  cylinderHeat: {
    ...engine.cylinderHeat,
    solvesWalls: true,
    cooling: { ...engine.cylinderHeat.cooling, ...changes },
  },
});

export interface SolvedWith {
  readonly point: SolvedPoint;
  readonly next: SolvedStart | null;
}

/** A point of such an engine, from a neighbour's solution where there is one. */
export function* solvedWith(
  what: string,
  engine: Engine,
  at: OperatingPoint,
  start: SolvedStart | null,
): Study<Outcome<SolvedWith>> {
  const model = buildModel(engine);
  if (!model.ok) return model;
  const { result, next } = yield* doing(what, solve(model.value, at, { start }));
  return result.converged
    ? success({ point: result, next })
    : failure([{ path: '', message: result.reason }]);
}
