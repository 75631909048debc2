import { Anderson } from '../numerics/anderson.ts';
import type { SolvedPoint } from '../results/point-result.ts';
import { Recorder } from '../results/recorder.ts';
import { summarise } from '../results/summarise.ts';
import { TURN } from '../units.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';
import { Period } from './period.ts';
import { keepFeasible, largestChange, weigh } from './period-map.ts';
import { buildSchedule } from './schedule.ts';
import type { SolvedStart, SolveOptions } from './solve.ts';
import { runningGuess } from './start.ts';
import { stepMethod } from './step-method.ts';
import { CycleSystem } from './system.ts';
import { Tempers } from './temper.ts';

/** Change over a period, relative, below which it counts as periodic. */
export const PERIODIC_CHANGE = 1e-6;
/** Change over a period below which the mesh is chosen anew, at full accuracy. */
const NEAR = 5e-3;
/** Times that the mesh is chosen anew because a settled period still had too large an error. */
const MOST_REFRESHES = 4;
/** Error of a step on a mesh made for another state that is still let pass, over the tolerance. */
const SLACK = 4;

/**
 * The search for the start of a period that the period ends with: state of all nodes and memory of all cylinders, in one
 * vector. Its driver alternates `advance` and, unless `settled`, `guess`; `finish` records what was found.
 *
 * From the cold start the first two periods are stepped with steps chosen by error, coarsely; then the mesh is held, so that
 * the map from the start of a period to its end is smooth. When the state comes near, the mesh is chosen anew at full
 * accuracy; so it is where a settled period turns out to have too large an error.
 */
export class PeriodicSearch {
  cycle = 0;
  /** Largest relative change of any unknown over the last period. */
  change = Infinity;
  readonly system: CycleSystem;
  private readonly period: Period;
  private readonly tolerance: number;
  private readonly coarse: number;
  private readonly wanted: number;
  private readonly parts: number;
  /** Start of the last period, its end, and the scales of both. */
  private readonly x: Float64Array;
  private readonly gx: Float64Array;
  private readonly weights: Float64Array;
  private readonly state: Float64Array;
  private readonly tempers = new Tempers();
  private anderson: Anderson;
  /** Periods still to be stepped with steps chosen by error. */
  private toAdapt: number;
  private far: boolean;
  private refreshes = 0;

  constructor(model: Model, point: OperatingPoint, options: SolveOptions) {
    const chosen = stepMethod(model, point);
    this.tolerance = options.tolerance ?? chosen.tolerance;
    this.coarse = chosen.coarse * this.tolerance;
    this.wanted = options.change ?? PERIODIC_CHANGE;
    this.parts = chosen.parts * (options.parts ?? 1);
    this.system = new CycleSystem(model, point);
    const knots = buildSchedule(model.geometry.cylinders, model.drive.turns);
    this.period = new Period(this.system, knots, {
      ...chosen,
      method: options.method ?? chosen.method,
      tolerance: this.tolerance,
    });

    const neighbour = options.start && fits(options.start, this.system) ? options.start : null;
    const start = neighbour ?? runningGuess(this.system);
    if (neighbour) this.period.borrow(neighbour.mesh);
    this.far = neighbour === null;
    this.toAdapt = neighbour ? 0 : 2;
    this.x = new Float64Array(start.state.length + start.memory.length);
    this.x.set(start.state);
    this.x.set(start.memory, start.state.length);
    this.gx = new Float64Array(this.x.length);
    this.weights = new Float64Array(this.x.length);
    this.state = new Float64Array(start.state.length);
    this.anderson = new Anderson(this.x.length, this.tempers.now.depth);
  }

  /** Whether the last period was stepped on a held mesh and ended as it began. */
  get settled(): boolean {
    return this.change < this.wanted && this.toAdapt === 0;
  }

  /** Whether the last period is close enough to the periodic one for its figures to be of use. */
  isWithin(change: number): boolean {
    return this.change < change && this.toAdapt === 0;
  }

  /** Steps one period from the present start. @returns null, or why it cannot be stepped */
  advance(): string | null {
    const { period, system, state, gx } = this;
    this.begin();
    let end =
      this.toAdapt > 0
        ? period.adapt(state, false, undefined, this.far ? this.coarse : this.tolerance)
        : period.follow(state, false, undefined, this.far ? 1 : this.parts);
    if (!end.ok && this.toAdapt === 0) {
      // The mesh was made for another state: choose steps again from where this period began.
      this.begin();
      this.anderson.forget();
      end = period.adapt(state);
    }
    if (!end.ok) return end.reason;
    this.cycle++;
    gx.set(state);
    gx.set(system.memory.values, state.length);
    weigh(system, this.weights);
    this.change = largestChange(this.x, gx, this.weights);
    return null;
  }

  private begin(): void {
    this.state.set(this.x.subarray(0, this.state.length));
    this.system.memory.values.set(this.x.subarray(this.state.length));
  }

  /** Chooses where the next period starts. */
  guess(): void {
    const { x, gx, weights, tempers } = this;
    if (this.toAdapt > 0) {
      this.toAdapt--;
      x.set(gx);
    } else if (this.far && this.change < NEAR) {
      this.chooseMeshAnew();
    } else {
      if (tempers.note(this.change)) {
        // It gets nowhere: another way of guessing, on a mesh made for where it stands.
        this.anderson = new Anderson(x.length, tempers.now.depth);
        this.chooseMeshAnew();
        return;
      }
      this.anderson.propose(x, gx, weights, x, tempers.now.damping);
      keepFeasible(this.system, x, gx, weights, tempers.now.repair);
    }
  }

  private chooseMeshAnew(): void {
    this.far = false;
    this.toAdapt = 1;
    this.anderson.forget();
    this.x.set(this.gx);
  }

  /**
   * Records the period that follows the last one and goes on from its end.
   *
   * @returns the solution; null where it shows that the search must go on; or why it cannot be stepped
   */
  finish(): { readonly result: SolvedPoint; readonly next: SolvedStart } | string | null {
    const recorded = this.record();
    if (typeof recorded === 'string') return recorded;
    const { result, next, largestError } = recorded;
    this.cycle++;
    this.change = result.residuals.change;
    this.gx.set(next.state);
    this.gx.set(next.memory, next.state.length);
    if (largestError > SLACK * this.tolerance && this.refreshes < MOST_REFRESHES) {
      this.refreshes++;
      this.chooseMeshAnew();
      return null;
    }
    if (this.settled) return { result, next };
    this.x.set(this.gx);
    return null;
  }

  /** Figures of the period that follows the last one, without going on from it; null where it cannot be stepped. */
  glance(): { readonly result: SolvedPoint; readonly next: SolvedStart } | null {
    const { system, gx, state } = this;
    const recorded = this.record();
    system.memory.values.set(gx.subarray(state.length));
    if (typeof recorded === 'string') return null;
    return { ...recorded, result: { ...recorded.result, preliminary: true } };
  }

  private record(): { result: SolvedPoint; next: SolvedStart; largestError: number } | string {
    const { system, period, state, weights, parts } = this;
    const n = state.length;
    const records = new Float64Array(system.size);
    records.set(this.gx.subarray(0, n));
    const began = this.gx.slice();
    const recorder = new Recorder(system, period.mesh.length * parts + 1);
    const end = period.follow(records, true, recorder.note, parts);
    if (!end.ok) return end.reason;
    const ended = began.slice();
    ended.set(records.subarray(0, n));
    ended.set(system.memory.values, n);
    const change = largestChange(began, ended, weights);
    return {
      result: summarise(system, records, began, recorder, this.cycle + 1, change),
      next: { state: ended.slice(0, n), memory: ended.slice(n), mesh: period.mesh.slice() },
      largestError: end.largestError,
    };
  }
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
