import { Anderson } from '../numerics/anderson.ts';
import type { SolvedPoint } from '../results/point-result.ts';
import { Recorder } from '../results/recorder.ts';
import { summarise } from '../results/summarise.ts';
import { TURN } from '../units.ts';
import type { Model } from './model.ts';
import type { OperatingPoint } from './operating-point.ts';
import { Period } from './period.ts';
import { emphasise, keepFeasible, largestChange, weigh } from './period-map.ts';
import { buildSchedule } from './schedule.ts';
import type { SolvedStart, SolveOptions } from './solve.ts';
import { runningGuess } from './start.ts';
import type { Accuracy } from './step-method.ts';
import { stepMethod } from './step-method.ts';
import { CycleSystem } from './system.ts';
import { Tempers } from './temper.ts';

/** Change over a period, relative, below which it counts as periodic. */
export const PERIODIC_CHANGE = 1e-6;
/** Change over a period, in multiples of the one wanted, after which the next may well be the last. */
const HOPEFUL = 6;
/**
 * Distance to the periodic state that the acceleration still sees, in multiples of the change wanted: where a large volume settles
 * slowly, a period changes little and many would change much.
 */
const ARRIVED = 30;
/** Change over a period below which the mesh is chosen anew, at full accuracy. */
const NEAR = 5e-3;
/** Change over the first period from a neighbour above which its mesh no longer fits. */
const APART = 1e-2;
/** Times that the mesh is chosen anew because a settled period still had too large an error. */
const MOST_REFRESHES = 4;
/** Error of a step on a mesh made for another state that is still let pass, over the tolerance. */
const SLACK = 4;

/** A period stepped with records: its figures, and what a neighbour needs to go on from it. */
export interface Recorded {
  readonly result: SolvedPoint;
  readonly next: SolvedStart;
}

/**
 * The search for the start of a period that the period ends with: state of all nodes and memory of all cylinders, in one
 * vector. Its driver alternates `advance` and `guess`, until it is `settled` and has `arrived`.
 *
 * From the cold start the first two periods are stepped with steps chosen by error, coarsely; then the mesh is held, so that
 * the map from the start of a period to its end is smooth. When the state comes near, the mesh is chosen anew at full
 * accuracy; so it is for a neighbour that turns out to be far away, and where a settled period has too large an error. What was learned of the map's slopes is
 * kept from mesh to mesh, and from neighbour to neighbour.
 */
export class PeriodicSearch {
  cycle = 0;
  /** Largest relative change of any unknown over the last period. */
  change = Infinity;
  readonly system: CycleSystem;
  private readonly period: Period;
  private readonly fine: Accuracy;
  private readonly coarse: Accuracy;
  private readonly wanted: number;
  private readonly parts: number;
  /** Start of the last period, its end, the scales of both, and those for guessing. */
  private readonly x: Float64Array;
  private readonly gx: Float64Array;
  private readonly weights: Float64Array;
  private readonly emphasis: Float64Array;
  /** Of the period being stepped: state, and what is recorded of it. */
  private readonly state: Float64Array;
  private readonly tempers = new Tempers();
  private anderson: Anderson;
  /** Periods still to be stepped with steps chosen by error. */
  private toAdapt: number;
  private far: boolean;
  private refreshes = 0;
  /** Largest relative difference between the last period's end and the start then guessed. */
  private ahead = Infinity;

  constructor(model: Model, point: OperatingPoint, options: SolveOptions) {
    const { method, fine, coarse } = stepMethod(model, point);
    const scale = options.tolerance === undefined ? 1 : options.tolerance / fine.tolerance;
    this.fine = { ...fine, tolerance: scale * fine.tolerance };
    this.coarse = { ...coarse, tolerance: scale * coarse.tolerance };
    this.wanted = options.change ?? PERIODIC_CHANGE;
    this.parts = options.parts ?? 1;
    this.system = new CycleSystem(model, point);
    const knots = buildSchedule(model.geometry.cylinders, model.drive.turns);
    this.period = new Period(this.system, knots, options.method ?? method);

    const neighbour = options.start && fits(options.start, this.system) ? options.start : null;
    const start = neighbour ? moved(neighbour, this.system) : runningGuess(this.system);
    if (neighbour) this.period.borrow(neighbour.mesh);
    this.far = neighbour === null;
    this.toAdapt = neighbour ? 0 : 2;
    this.x = new Float64Array(start.state.length + start.memory.length);
    this.x.set(start.state);
    this.x.set(start.memory, start.state.length);
    this.gx = new Float64Array(this.x.length);
    this.weights = new Float64Array(this.x.length);
    this.emphasis = new Float64Array(this.x.length);
    this.state = new Float64Array(this.system.size);
    this.anderson = new Anderson(this.x.length, this.tempers.now.depth);
    if (neighbour) this.anderson.adopt(neighbour.secants);
  }

  /** Whether the last period was stepped on a held mesh and ended as it began. */
  get settled(): boolean {
    return this.isWithin(this.wanted);
  }

  /** Whether the start last guessed is nearly the last period's end: no slow change is left. */
  get arrived(): boolean {
    return this.ahead < ARRIVED * this.wanted;
  }

  /** Whether the next period may well be the one sought, so that it should be recorded. */
  get hopeful(): boolean {
    return !this.far && this.isWithin(HOPEFUL * this.wanted);
  }

  /** Whether the next period starts from a neighbour's solution. */
  get atNeighbour(): boolean {
    return this.cycle === 0 && !this.far;
  }

  /** Whether the last period is close enough to the periodic one for its figures to be of use. */
  isWithin(change: number): boolean {
    return this.change < change && this.toAdapt === 0;
  }

  /** Steps one period from the present start. @returns null, or why it cannot be stepped */
  advance(): string | null {
    const { period, state } = this;
    this.begin();
    let end =
      this.toAdapt > 0
        ? period.adapt(state, this.far ? this.coarse : this.fine)
        : period.follow(state, false, undefined, this.far ? 1 : this.parts);
    if (!end.ok) {
      // The guess was no possible start, or a neighbour's mesh is none for this state: step from where the last period ended, with
      // steps chosen by error.
      if (this.cycle > 0) this.x.set(this.gx);
      this.begin();
      this.anderson.forget();
      end = period.adapt(state, this.far ? this.coarse : this.fine);
    }
    if (!end.ok) return end.reason;
    this.note();
    return null;
  }

  /**
   * Steps one period from the present start and records it. Only on a held mesh.
   *
   * @returns its figures and whether its steps were fine enough; null where it cannot be stepped, which `advance` may mend
   */
  advanceRecording(): (Recorded & { readonly fine: boolean }) | null {
    const { period, state, system, parts, x } = this;
    this.begin();
    const recorder = new Recorder(system, period.mesh.length * parts + 1);
    const end = period.follow(state, true, recorder.note, parts);
    if (!end.ok) return null;
    this.note();
    const n = system.stateSize;
    return {
      result: summarise(system, state, x, recorder, this.cycle, this.change),
      next: {
        state: this.gx.slice(0, n),
        memory: this.gx.slice(n),
        volumes: volumesAtStart(system),
        mesh: period.mesh.slice(),
        lambda: system.model.engine.charge.lambda,
        secants: this.anderson.secants,
      },
      fine: end.largestError <= SLACK * this.fine.tolerance || this.refreshes >= MOST_REFRESHES,
    };
  }

  private begin(): void {
    const { system, state, x } = this;
    state.fill(0);
    state.set(x.subarray(0, system.stateSize));
    system.memory.values.set(x.subarray(system.stateSize));
  }

  private note(): void {
    const { system, gx, x, weights } = this;
    const n = system.stateSize;
    this.cycle++;
    system.settleWalls(this.state);
    system.relief?.settle();
    gx.set(this.state.subarray(0, n));
    gx.set(system.memory.values, n);
    weigh(system, weights);
    this.change = largestChange(x, gx, weights);
  }

  /** Chooses where the next period starts. */
  guess(): void {
    const { x, gx, tempers } = this;
    if (this.toAdapt > 0) {
      this.toAdapt--;
      if (this.far) {
        x.set(gx);
        return;
      }
      this.anderson.rebase();
    } else if (this.far && this.change < NEAR) {
      this.chooseMeshAnew();
      return;
    } else if (tempers.note(this.change)) {
      // It gets nowhere: another way of guessing, on a mesh made for where it stands.
      this.anderson = new Anderson(x.length, tempers.now.depth);
      this.chooseMeshAnew();
      return;
    }
    if (this.cycle === 1 && this.change > APART) this.toAdapt = 1;
    emphasise(this.system, this.weights, this.emphasis);
    this.anderson.propose(x, gx, this.emphasis, x, tempers.now.damping);
    keepFeasible(this.system, x, gx, this.weights, tempers.now.repair);
    this.ahead = largestChange(gx, x, this.weights);
  }

  /** The next period starts where the last one ended, with steps chosen by error. */
  private chooseMeshAnew(): void {
    this.far = false;
    this.toAdapt = 1;
    this.x.set(this.gx);
  }

  /** As `chooseMeshAnew`, because a settled period was stepped too coarsely. */
  refresh(): void {
    this.refreshes++;
    this.chooseMeshAnew();
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

/** A neighbour's start in this system's volumes: of the same pressures, temperatures and compositions. */
function moved(start: SolvedStart, system: CycleSystem): SolvedStart {
  const state = start.state.slice();
  const { stride } = system.gas;
  volumesAtStart(system).forEach((volume, node) => {
    const share = volume / start.volumes[node];
    for (let k = node * stride; k < (node + 1) * stride; k++) state[k] *= share;
  });
  return { ...start, state };
}

function volumesAtStart({ gas, pistons }: CycleSystem): Float64Array {
  pistons.moveTo(0);
  return gas.volume.slice(0, gas.dynamicCount);
}
