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

/** How nearly a point must repeat where only its margin counts: figures then stand within a few 1e-5. */
const CHECK = { change: 1e-5 };

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
  if (now === null) return found;
  for (const name of vary.filter((each) => knobApplies(model.engine, each))) {
    const one = yield* rangeFix(model, speeds, throttle, target, name, now);
    if (one) found.push(one);
  }
  return found;
}

/** A fix as solved at one speed, figures there before it, and the model with it. */
interface Solved {
  readonly fix: Fix;
  readonly at: number;
  readonly before: FixFigures;
  readonly model: Model;
}

/** One knob; null where nothing can be said of it. */
function* rangeFix(
  model: Model,
  speeds: readonly number[],
  throttle: number,
  target: Target,
  name: KnobName,
  worst: Least,
): Study<RangeFix | null> {
  const top = speeds.at(-1)!;
  let best: RangeFix | null = null;
  let untried: Solved | null = null;
  let { speed } = worst;
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    const matched = yield* match(model, { speed, throttle }, target, [name]);
    if (!matched.ok) break;
    const { before } = matched.value;
    const fix = matched.value.fixes[0]!;
    if (!fix.reached) {
      if (best || untried) break;
      const least = { speed, figure: fix.figures.figure };
      return { fix, solvedAt: speed, before, everywhere: false, least, unsolved: [], cost: null };
    }
    const built = fixedModel(model, fix);
    if (!built.ok) break;
    untried = { fix, at: speed, before, model: built.value };
    if (speed !== top && round < MOST_ROUNDS) {
      // What is solved for a slow speed falls short at the top more often than not: look there before looking everywhere.
      const there = yield* doing('at the top', solve(built.value, { speed: top, throttle }, CHECK));
      if (there.result.converged && figureOf(target.figure, there.result) < target.value) {
        speed = top;
        continue;
      }
    }
    const tried: RangeFix | null = yield* everySpeed(model, speeds, throttle, target, untried);
    untried = null;
    if (!tried) break;
    if (!best || tried.least.figure > best.least.figure) best = tried;
    if (tried.everywhere || tried.least.speed === speed) break;
    ({ speed } = tried.least);
  }
  const last = untried && (yield* everySpeed(model, speeds, throttle, target, untried));
  return last && (!best || last.least.figure > best.least.figure) ? last : best;
}

/** What a fix does at every speed; null where none has an answer. */
function* everySpeed(
  model: Model,
  speeds: readonly number[],
  throttle: number,
  target: Target,
  { fix, at, before, model: fixed }: Solved,
): Study<RangeFix | null> {
  const { least, unsolved, highest } = yield* figuresAt(fixed, speeds, throttle, target);
  if (!least || !highest) return null;
  const limits = limitsPassed(model.engine.blower, highest.point);
  return {
    fix: { ...fix, beyond: [...new Set([...fix.beyond, ...limits])] },
    solvedAt: at,
    before,
    everywhere: unsolved.length === 0 && least.figure >= target.value,
    least,
    unsolved,
    cost: yield* costAt(model, target, { speed: highest.point.speed, throttle }, highest.point),
  };
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
    const solution: Solution = yield* doing('every speed', solve(model, point, { ...CHECK, start: near }));
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
