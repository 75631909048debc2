import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { SolvedStart } from '../../cycle/solve.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { fixFigures } from './fix.ts';
import type { Fix, FixFigures } from './fix.ts';
import { KnobSearch } from './knob-search.ts';
import { KNOBS, knobApplies, knobNamed } from './knobs.ts';
import type { KnobName } from './knobs.ts';
import type { Target } from './target.ts';

/** Ways to a target at an operating point. */
export interface Match {
  readonly target: Target;
  readonly point: OperatingPoint;
  readonly before: FixFigures;
  /** Whether the design as it is reaches the target already. */
  readonly met: boolean;
  readonly fixes: readonly Fix[];
}

/**
 * What would bring a figure to a value at an operating point: each knob by itself, solved, rounded to what can be built, and
 * solved again as rounded.
 *
 *   f(x) = figure(x) - target;   from the design as it is towards the end that usually helps, then the other, to a change of sign;
 *   there by Brent's method; rounded away from where it came from; gears to whole teeth
 *
 * @param vary  - which knobs; all of them unless given; those that the engine lacks are left out
 * @param start - a stated neighbour's solution, or null
 */
export function* match(
  model: Model,
  point: OperatingPoint,
  target: Target,
  vary: readonly KnobName[] = KNOBS,
  start: SolvedStart | null = null,
): Study<Outcome<Match>> {
  const base = yield* doing('design as it is', solve(model, point, { start }));
  if (!base.result.converged) return failure([{ path: '', message: base.result.reason }]);
  const before = fixFigures(target, base.result);
  const fixes: Fix[] = [];
  for (const name of vary.filter((each) => knobApplies(model.engine, each))) {
    const search = new KnobSearch(model, point, target, knobNamed(name), base.result, base.next);
    fixes.push(yield* search.run());
  }
  return success({ target, point, before, met: before.figure >= target.value, fixes });
}
