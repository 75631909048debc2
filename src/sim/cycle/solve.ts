import type { Secants } from '../numerics/anderson.ts';
import type { RosenbrockW } from '../numerics/rosenbrock-w.ts';
import type { PointResult, SolvedPoint } from '../results/point-result.ts';
import { unsolved } from '../results/summarise.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';
import type { Recorded } from './periodic-search.ts';
import { PeriodicSearch } from './periodic-search.ts';
import { solveOnJet } from './solve-on-jet.ts';
import type { PeriodStart } from './start.ts';
import type { CycleSystem } from './system.ts';

export interface SolveOptions {
  /**
   * A stated neighbour's solution to start from: the same engine elsewhere, or one that differs in dimensions only. One of
   * another layout is not used, and one that leads to no answer gives way to the cold start. Without it, the cold start.
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
  /** Of every node at the start of the period [m^3]. */
  readonly volumes: Float64Array;
  readonly mesh: Float64Array;
  /** Of the mixture that it ran on [-]. */
  readonly lambda: number;
  /** What the search learned of the slopes of its map. */
  readonly secants: Secants;
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
 * without an answer comes back with `converged` false and a reason. Where a jet sets the mixture, see `solveOnJet`.
 */
export function* solve(
  model: Model,
  point: OperatingPoint,
  options: SolveOptions = {},
): Generator<Progress, Solution> {
  const solveGiven = (given: Model, how: SolveOptions) => solveOnMixture(given, point, how);
  return yield* model.engine.charge.jet
    ? solveOnJet(model, point, options, solveGiven)
    : solveGiven(model, options);
}

function* solveOnMixture(
  model: Model,
  point: OperatingPoint,
  options: SolveOptions,
): Generator<Progress, Solution> {
  const mostCycles = options.mostCycles ?? MOST_CYCLES;
  let search = new PeriodicSearch(model, point, options);
  const fromNeighbour = search.atNeighbour;
  let found = yield* settle(search, mostCycles, options.preview);
  if (typeof found === 'string' && fromNeighbour) {
    search = new PeriodicSearch(model, point, { ...options, start: null });
    found = yield* settle(search, mostCycles, options.preview);
  }
  return typeof found === 'string'
    ? { result: unsolved(model, point, search.cycle, search.change, found), next: null }
    : { result: found.result, next: found.next };
}

/**
 * Drives a search until its period repeats, yielding after every period.
 *
 * @returns the recorded period, or why there is none
 */
export function* settle(
  search: PeriodicSearch,
  mostCycles: number,
  preview = false,
): Generator<Progress, Recorded | string> {
  let toGlance = preview;
  while (search.cycle < mostCycles) {
    const glancing = toGlance && (search.atNeighbour || search.isWithin(GLANCE));
    const recorded = glancing || search.hopeful ? search.advanceRecording() : null;
    if (!recorded) {
      const problem = search.advance();
      if (problem !== null) return problem;
    }
    const seen = glancing && search.isWithin(GLANCE) ? recorded : null;
    if (seen) toGlance = false;
    const { settled } = search;
    search.guess();
    if (recorded && settled) {
      if (!recorded.fine) search.refresh();
      else if (search.arrived) return recorded;
    }
    yield {
      cycle: search.cycle,
      change: search.change,
      preview: seen && { ...seen.result, preliminary: true },
      near: seen && seen.next,
    };
  }
  return `no periodic state after ${search.cycle} periods: the last one still changed a volume by ${percent(search.change)}${misfiring(search.system)}`;
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
