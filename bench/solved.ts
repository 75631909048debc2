import type { Model, OperatingPoint, Solution, SolveOptions, SolvedPoint } from '../src/sim/index.ts';
import { rpm } from '../src/sim/units.ts';
import type { State } from './core/cores.ts';

export const at = (speed_rpm: number, throttle = 1): OperatingPoint => ({ speed: speed_rpm * rpm, throttle });

export type Solved = Solution & {
  readonly result: SolvedPoint;
  readonly next: NonNullable<Solution['next']>;
};

/** Solves, and throws where there is no answer: a bench of a point without one would be a bench of nothing. */
export function solved(
  { core }: State,
  model: Model,
  point: OperatingPoint,
  options: SolveOptions = {},
): Solved {
  const solution = core.solveToEnd(model, point, options);
  if (!solution.result.converged) throw new Error(`${model.engine.name}: ${solution.result.reason}`);
  return solution as Solved;
}
