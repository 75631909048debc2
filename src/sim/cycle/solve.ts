import { Anderson } from '../numerics/anderson.ts';
import type { RosenbrockW } from '../numerics/rosenbrock-w.ts';
import { keepFeasible, largestChange, weigh } from './period-map.ts';
import { stepMethod } from './step-method.ts';
import type { PointResult, SolvedPoint } from '../results/point-result.ts';
import { Recorder } from '../results/recorder.ts';
import { summarise, unsolved } from '../results/summarise.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';
import { Period } from './period.ts';
import { buildSchedule } from './schedule.ts';
import type { PeriodStart } from './start.ts';
import { runningGuess } from './start.ts';
import { TURN } from '../units.ts';
import { CycleSystem } from './system.ts';
import { Tempers } from './temper.ts';

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

export const PERIODIC_CHANGE = 1e-6;
const MOST_CYCLES = 300;
/** Change over a period below which the mesh is chosen anew, at full accuracy. */
const NEAR = 5e-3;
/** Change below which a preliminary result is worth showing. */
const GLANCE = 5e-2;

/**
 * Periodic steady state of one operating point.
 *
 * Two periods are stepped with steps chosen by error, coarsely; then the mesh is held, so that the map from the start of a period
 * to its end is smooth, and Anderson iteration looks for its fixed point. When the state comes near, the mesh is chosen anew at full accuracy.
 * Converged = every volume's mass of each constituent and energy, and every cylinder's memory, change by less than 1e-6 over a
 * period. A last period on the same mesh records everything that is reported.
 *
 * Yields after every period, so that whoever drives it may stop it. Never throws for what can be expected: a point
 * without an answer comes back with `converged` false and a reason.
 */
export function* solve(
  model: Model,
  point: OperatingPoint,
  options: SolveOptions = {},
): Generator<Progress, Solution> {
  const chosen = stepMethod(model, point);
  const method = options.method ?? chosen.method;
  const tolerance = options.tolerance ?? chosen.tolerance;
  const wanted = options.change ?? PERIODIC_CHANGE;
  const mostCycles = options.mostCycles ?? MOST_CYCLES;
  const parts = options.parts ?? 1;
  const system = new CycleSystem(model, point);
  const knots = buildSchedule(model.geometry.cylinders, model.drive.turns);
  const period = new Period(system, knots, method, tolerance);

  const neighbour = options.start && fits(options.start, system) ? options.start : null;
  const start = neighbour ?? runningGuess(system);
  const n = system.stateSize;
  const size = n + start.memory.length;
  const x = new Float64Array(size);
  const gx = new Float64Array(size);
  const weights = new Float64Array(size);
  x.set(start.state);
  x.set(start.memory, n);
  const state = new Float64Array(n);
  const tempers = new Tempers();
  let anderson = new Anderson(size, tempers.now.depth);
  if (neighbour) period.borrow(neighbour.mesh);

  let adaptNext = neighbour ? 0 : 2;
  let rough = neighbour === null;
  let refreshBelow = neighbour ? 0 : NEAR;
  let previewBelow = options.preview ? GLANCE : 0;
  let change = Infinity;
  let cycle = 0;
  let refreshes = 0;
  for (;;) {
    if (cycle >= mostCycles) {
      const reason = `no periodic state after ${cycle} periods: the last one still changed a volume by ${percent(change)}${misfiring(system)}`;
      return { result: unsolved(model, point, cycle, change, reason), next: null };
    }
    state.set(x.subarray(0, n));
    system.memory.values.set(x.subarray(n));
    let end =
      adaptNext > 0
        ? period.adapt(state, false, undefined, rough ? chosen.coarse * tolerance : tolerance)
        : period.follow(state, false, undefined, parts);
    if (!end.ok && adaptNext === 0) {
      // The mesh was made for another state: choose steps again from where this period began.
      state.set(x.subarray(0, n));
      system.memory.values.set(x.subarray(n));
      anderson.forget();
      end = period.adapt(state);
    }
    if (!end.ok) return { result: unsolved(model, point, cycle, change, end.reason), next: null };
    cycle++;
    gx.set(state);
    gx.set(system.memory.values, n);
    weigh(system, weights);
    change = largestChange(x, gx, weights);
    let preview: SolvedPoint | null = null;
    let near: SolvedStart | null = null;
    if (change < previewBelow && adaptNext === 0) {
      previewBelow = 0;
      preview = glance(system, period, state, gx, weights, cycle);
      system.memory.values.set(gx.subarray(n));
      if (preview) near = { state: gx.slice(0, n), memory: gx.slice(n), mesh: period.mesh.slice() };
    }
    yield { cycle, change, preview, near };

    if (change < wanted && adaptNext === 0) {
      const records = new Float64Array(system.size);
      records.set(state);
      const recorder = new Recorder(system, knots.length + period.mesh.length * parts + 2);
      const began = gx.slice();
      const last = period.follow(records, true, recorder.note, parts);
      if (!last.ok) return { result: unsolved(model, point, cycle, change, last.reason), next: null };
      cycle++;
      gx.set(records.subarray(0, n));
      gx.set(system.memory.values, n);
      change = largestChange(began, gx, weights);
      if (last.largestError > 4 * tolerance && refreshes < 4) {
        refreshes++;
        adaptNext = 1;
        anderson.forget();
        x.set(gx);
        continue;
      }
      if (change < wanted) {
        const result = summarise(system, records, began, recorder, cycle, change);
        const next = { state: gx.slice(0, n), memory: gx.slice(n), mesh: period.mesh };
        return { result, next };
      }
      x.set(gx);
      continue;
    }

    if (adaptNext > 0) {
      adaptNext--;
      x.set(gx);
    } else if (change < refreshBelow && refreshes < 2) {
      // The mesh was chosen while the state was still far away: choose it once more.
      refreshes++;
      refreshBelow = 0;
      rough = false;
      adaptNext = 1;
      anderson.forget();
      x.set(gx);
    } else {
      if (tempers.note(change)) anderson = new Anderson(size, tempers.now.depth);
      anderson.propose(x, gx, weights, x, tempers.now.damping);
      keepFeasible(system, x, gx, weights, tempers.now.repair);
    }
  }
}

/** Figures of one more period, without going on from it; null where it cannot be stepped. */
function glance(
  system: CycleSystem,
  period: Period,
  state: Float64Array,
  began: Float64Array,
  weights: Float64Array,
  cycle: number,
): SolvedPoint | null {
  const records = new Float64Array(system.size);
  records.set(state);
  const recorder = new Recorder(system, period.mesh.length + 2);
  const end = period.follow(records, true, recorder.note);
  if (!end.ok) return null;
  const ended = new Float64Array(began.length);
  ended.set(records.subarray(0, system.stateSize));
  ended.set(system.memory.values, system.stateSize);
  const change = largestChange(began, ended, weights);
  return { ...summarise(system, records, began, recorder, cycle, change), preliminary: true };
}

/** Whether a neighbour has the same nodes, cylinders and period. */
function fits(start: SolvedStart, system: CycleSystem): boolean {
  const { turns } = system.model.drive;
  return (
    start.state.length === system.stateSize &&
    start.memory.length === system.memory.values.length &&
    Math.abs(start.mesh[start.mesh.length - 1] - turns * TURN) < 1e-9
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
