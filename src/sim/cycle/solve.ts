import type { RosenbrockW } from '../numerics/rosenbrock-w.ts';
import type { PointResult, SolvedPoint } from '../results/point-result.ts';
import { unsolved } from '../results/summarise.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';
import { PeriodicSearch } from './periodic-search.ts';
import type { PeriodStart } from './start.ts';
import type { CycleSystem } from './system.ts';

export interface SolveOptions {
  /**
   * A stated neighbour's solution to start from: the same engine elsewhere, or one that differs in dimensions only. One of
   * another layout is not used. Without it, the cold start.
   */
  readonly start?: SolvedStart | null;
  /** Also yield a preliminary result on the way, as soon as the state is near. */
  readonly preview?: boolean;
  /** Error allowed per step, relative to every node's mass and thermal energy. */
  readonly tolerance?: number;
  /** Change over a period, relative, below which it counts as periodic. */
  readonly change?: number;
  /** Periods after which it gives up. */
  readonly mostCycles?: number;
  /** Cuts every step of the final mesh into this many: for studies of the step's influence. */
  readonly parts?: number;
  readonly method?: RosenbrockW;
}

/** What a later point needs to go on from this one. Plain data. */
export interface SolvedStart extends PeriodStart {
  readonly mesh: Float64Array;
}

export interface Progress {
  readonly cycle: number;
  /** Largest relative change of any volume over the last period. */
  readonly change: number;
  /** Once, where asked for: figures of a period that did not repeat yet. */
  readonly preview?: SolvedPoint | null;
  /** With the preview: the state it stands on, for a neighbour to go on from. */
  readonly near?: SolvedStart | null;
}

export interface Solution {
  readonly result: PointResult;
  /** Null where there is none. */
  readonly next: SolvedStart | null;
}

/** Periods after which a search gives up. */
const MOST_CYCLES = 300;
/** Change below which a preliminary result is worth showing. */
const GLANCE = 5e-2;

/**
 * Periodic steady state of one operating point: every volume's mass of each constituent and energy, and every cylinder's
 * memory, change by less than 1e-6 over a period. See PeriodicSearch for how it is found.
 *
 * Yields after every period, so that whoever drives it may stop it. Never throws for what can be expected: a point
 * without an answer comes back with `converged` false and a reason.
 */
export function* solve(
  model: Model,
  point: OperatingPoint,
  options: SolveOptions = {},
): Generator<Progress, Solution> {
  const search = new PeriodicSearch(model, point, options);
  const mostCycles = options.mostCycles ?? MOST_CYCLES;
  const giveUp = (reason: string): Solution => ({
    result: unsolved(model, point, search.cycle, search.change, reason),
    next: null,
  });
  let toGlance = options.preview === true;
  while (search.cycle < mostCycles) {
    const problem = search.advance();
    if (problem !== null) return giveUp(problem);
    const glance = toGlance && search.isWithin(GLANCE) ? search.glance() : null;
    if (glance) toGlance = false;
    const { cycle, change } = search;
    yield { cycle, change, preview: glance?.result ?? null, near: glance?.next ?? null };
    if (!search.settled) {
      search.guess();
      continue;
    }
    const found = search.finish();
    if (typeof found === 'string') return giveUp(found);
    if (found) return found;
  }
  return giveUp(
    `no periodic state after ${search.cycle} periods: the last one still changed a volume by ${percent(search.change)}${misfiring(search.system)}`,
  );
}

/** Drains `solve`. */
export function solveToEnd(model: Model, point: OperatingPoint, options: SolveOptions = {}): Solution {
  const run = solve(model, point, options);
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}

/** The periodic steady state of one point, from the cold start. */
export const solvePoint = (model: Model, point: OperatingPoint): PointResult =>
  solveToEnd(model, point).result;

const percent = (share: number): string => `${(100 * share).toPrecision(2)} %`;

/** What to add to a failure where some cylinder can hardly fire: such engines skip turns, and no turn is like the last. */
function misfiring(system: CycleSystem): string {
  const { combustion } = system.model.engine;
  const fading = combustion.misfireResidual - combustion.misfireWidth / 2;
  const weak = system.trapped.filter(({ purity }) => 1 - purity > fading).length;
  if (!combustion.enabled || weak === 0) return '';
  return `; ${weak} of ${system.trapped.length} cylinders hold more burned gas than they fire with every turn, so the engine misfires without settling`;
}
