import { buildModel } from '../../cycle/model.ts';
import type { Model } from '../../cycle/model.ts';
import { solve } from '../../cycle/solve.ts';
import type { Solution, SolvedStart } from '../../cycle/solve.ts';
import type { Outcome } from '../../outcome.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { doing } from '../study-step.ts';
import type { Study } from '../study-step.ts';
import { KNOBS, knobApplies, knobNamed } from './knobs.ts';
import type { KnobName } from './knobs.ts';
import { match } from './match.ts';
import { fixFigures, limitsPassed } from './fix.ts';
import type { Fix, FixFigures } from './fix.ts';
import { figureOf } from './target.ts';
import type { Target } from './target.ts';

/** A fix that is to hold at every speed of a range. */
export interface RangeFix {
  /** As solved at `solvedAt`, the speed that asked for most [rad/s]. */
  readonly fix: Fix;
  readonly solvedAt: number;
  /** Figures there of the design as it is. */
  readonly before: FixFigures;
  /** Whether the target holds at every speed with it, and where it comes nearest to failing. */
  readonly everywhere: boolean;
  readonly least: { readonly speed: number; readonly figure: number };
  /** Speeds without an answer with it [rad/s]. */
  readonly unsolved: readonly number[];
  /** At the highest speed, where it costs most; null for one that was not tried at all of them. */
  readonly cost: {
    readonly speed: number;
    readonly before: FixFigures;
    readonly figures: FixFigures;
  } | null;
}

/** Speeds at which a fix is solved for, one after the other, until it holds everywhere. */
const MOST_ROUNDS = 3;

/** The model with a fix in it. */
export function fixedModel(model: Model, fix: Fix): Outcome<Model> {
  const { engine } = model;
  return fix.gears
    ? buildModel({ ...engine, blower: { ...engine.blower, gears: fix.gears } })
    : knobNamed(fix.vary).at(model, fix.to);
}

/**
 * What would lift a figure to a value at every speed: each knob solved at the speed that is worst, tried at all, and solved again
 * where it then falls short. One that does not reach the target at the worst speed is not tried at the others.
 *
 * @param speeds - rising [rad/s]
 * @param target - to be reached or passed
 * @param known  - where the design as it is comes nearest to failing, if that has been worked out
 */
export function* matchRange(
  model: Model,
  speeds: readonly number[],
  throttle: number,
  target: Target,
  vary: readonly KnobName[] = KNOBS,
  known: Least | null = null,
): Study<readonly RangeFix[]> {
  const now = known ?? (yield* figuresAt(model, speeds, throttle, target)).least;
  const found: RangeFix[] = [];
  for (const name of vary.filter((each) => knobApplies(model.engine, each))) {
    let worst = now;
    let best: RangeFix | null = null;
    for (let round = 0; round < MOST_ROUNDS && worst; round++) {
      const matched = yield* match(model, { speed: worst.speed, throttle }, target, [name]);
      if (!matched.ok) break;
      const [fix] = matched.value.fixes;
      if (!fix!.reached) {
        const { before } = matched.value;
        const least = { speed: worst.speed, figure: fix!.figures.figure };
        best ??= {
          fix: fix!,
          solvedAt: worst.speed,
          before,
          everywhere: false,
          least,
          unsolved: [],
          cost: null,
        };
        break;
      }
      const built = fixedModel(model, fix!);
      if (!built.ok) break;
      const { least, unsolved, highest } = yield* figuresAt(built.value, speeds, throttle, target);
      if (!least || !highest) break;
      const everywhere = unsolved.length === 0 && least.figure >= target.value;
      if (!best || least.figure > best.least.figure) {
        const limits = limitsPassed(model.engine.blower, highest.point);
        best = {
          fix: { ...fix!, beyond: [...new Set([...fix!.beyond, ...limits])] },
          solvedAt: worst.speed,
          before: matched.value.before,
          everywhere,
          least,
          unsolved,
          cost: yield* costAt(model, target, { speed: highest.point.speed, throttle }, highest.point),
        };
      }
      if (everywhere || least.speed === worst.speed) break;
      worst = least;
    }
    if (best) found.push(best);
  }
  return found;
}

/** Where a figure is least among speeds [rad/s]. */
export interface Least {
  readonly speed: number;
  readonly figure: number;
}

function* figuresAt(
  model: Model,
  speeds: readonly number[],
  throttle: number,
  target: Target,
): Study<{ least: Least | null; unsolved: number[]; highest: { readonly point: SolvedPoint } | null }> {
  const unsolved: number[] = [];
  let least: Least | null = null;
  let highest: { readonly point: SolvedPoint } | null = null;
  let near: SolvedStart | null = null;
  for (const speed of [...speeds].reverse()) {
    const point = { speed, throttle };
    const solution: Solution = yield* doing('every speed', solve(model, point, { start: near }));
    near = solution.next;
    if (!solution.result.converged) {
      unsolved.push(speed);
      continue;
    }
    highest ??= { point: solution.result };
    const figure = figureOf(target.figure, solution.result);
    if (!least || figure < least.figure) least = { speed, figure };
  }
  return { least, unsolved, highest };
}

/** What a fix costs at a point, beside the design as it is; null where that has no answer. */
function* costAt(
  model: Model,
  target: Target,
  point: OperatingPoint,
  fixed: SolvedPoint,
): Study<RangeFix['cost']> {
  const { result } = yield* doing('what it costs', solve(model, point));
  return result.converged
    ? { speed: point.speed, before: fixFigures(target, result), figures: fixFigures(target, fixed) }
    : null;
}
