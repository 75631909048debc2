import type { Knot } from './schedule.ts';
import { Stepper } from './stepper.ts';
import type { RosenbrockW } from '../numerics/rosenbrock-w.ts';
import type { Accuracy } from './step-method.ts';
import type { CycleSystem } from './system.ts';

const SHORTEST = 1e-8;
/** Borrowed angles nearer to a knot than this are left out [rad]. */
const CLOSE = 1e-3;

export type PeriodEnd =
  { readonly ok: true; readonly largestError: number } | { readonly ok: false; readonly reason: string };

/** Called at every point of the mesh with the gas unpacked there; `y` is state and records so far, valid during the call. */
export type Observer = (theta: number, y: Float64Array) => void;

/**
 * Steps the network over one period, in one of two ways.
 *
 * `adapt` chooses each step by its error and leaves the angles it stepped on in `mesh`. `follow` steps on that mesh:
 * then the map from the start of a period to its end is a smooth function of the start, which the iteration to the
 * periodic state needs. Both stop at every knot and let the system act on its events.
 */
export class Period {
  /** Angles of the last adapted mesh, from 0 to the period [rad]. */
  mesh: Float64Array = new Float64Array(0);
  /** Steps taken and refused since the beginning, for benches. */
  taken = 0;
  refused = 0;
  private readonly stepper: Stepper;
  private next: Float64Array;
  private state: Float64Array;

  constructor(
    private readonly system: CycleSystem,
    private readonly knots: readonly Knot[],
    private readonly method: RosenbrockW,
  ) {
    this.stepper = new Stepper(system, method);
    this.next = new Float64Array(system.size);
    this.state = new Float64Array(system.size);
  }

  get length(): number {
    return this.knots[this.knots.length - 1].angle;
  }

  /**
   * Makes a mesh for this system of one that served a neighbour: its angles, with the knots of this system put in and what
   * stands too close to them left out. Between two equal schedules it is the same mesh.
   */
  borrow(mesh: Float64Array): void {
    const angles = [0];
    let i = 0;
    for (const { angle } of this.knots) {
      const from = angles[angles.length - 1];
      const room = Math.min(0.3 * (angle - from), CLOSE);
      while (i < mesh.length && mesh[i] <= from + room) i++;
      for (; i < mesh.length && mesh[i] < angle - room; i++) angles.push(mesh[i]);
      angles.push(angle);
    }
    this.mesh = Float64Array.from(angles);
  }

  /** Advances `y` over one period with steps chosen by error. */
  adapt(y: Float64Array, { tolerance, longest }: Accuracy, record = false, observe?: Observer): PeriodEnd {
    const { system, stepper, method } = this;
    const angles = [0];
    this.state.fill(0);
    this.state.set(y.subarray(0, system.stateSize));
    let theta = 0;
    let span = longest / 8;
    let largestError = 0;
    stepper.theta = theta;
    if (!stepper.begin(this.state, record)) return system.failure(theta);
    observe?.(theta, this.state);
    for (const knot of this.knots) {
      while (theta < knot.angle) {
        const left = knot.angle - theta;
        const tried = span >= 0.99 * left ? left : 2 * span > left ? left / 2 : span;
        stepper.theta = theta;
        stepper.span = tried;
        const error = stepper.step(this.state, this.next, record, true) ? stepper.error : Infinity;
        const grow = Math.min(2.5, Math.max(0.2, 0.9 * Math.pow(tolerance / error, 1 / method.order)));
        const reached = tried === left ? knot.angle : theta + tried;
        stepper.theta = reached;
        if (error <= tolerance && stepper.begin(this.next, record)) {
          theta = reached;
          system.keep();
          largestError = Math.max(largestError, error);
          [this.state, this.next] = [this.next, this.state];
          angles.push(theta);
          this.taken++;
          // A step cut short by a knot says little about the next one.
          span = Math.min(longest, tried < span ? Math.max(span, tried * grow) : tried * grow);
          if (theta < knot.angle) observe?.(theta, this.state);
        } else {
          this.refused++;
          span = error <= tolerance ? tried / 4 : tried * Math.min(grow, 0.8);
          if (!(span > SHORTEST)) return system.failure(theta);
          stepper.theta = theta;
          if (!stepper.begin(this.state, record)) return system.failure(theta);
        }
      }
      system.actOn(knot.events);
      observe?.(theta, this.state);
    }
    this.mesh = Float64Array.from(angles);
    y.set(this.state.subarray(0, y.length));
    return { ok: true, largestError };
  }

  /**
   * Advances `y` over one period on the present mesh.
   *
   * @param parts - equal parts that every step of the mesh is cut into
   * @returns with the largest error of a step only where it records; the period itself does not ask for it
   */
  follow(y: Float64Array, record = false, observe?: Observer, parts = 1): PeriodEnd {
    const { system, stepper, mesh, knots } = this;
    this.state.fill(0);
    this.state.set(y.subarray(0, system.stateSize));
    let largestError = 0;
    let k = 0;
    stepper.theta = 0;
    if (!stepper.begin(this.state, record)) return system.failure(0);
    observe?.(0, this.state);
    for (let i = 1; i < mesh.length; i++) {
      const begin = mesh[i - 1];
      const part = (mesh[i] - begin) / parts;
      for (let p = 1; p <= parts; p++) {
        const theta = begin + (p - 1) * part;
        const reached = p === parts ? mesh[i] : begin + p * part;
        stepper.theta = theta;
        stepper.span = reached - theta;
        if (!stepper.step(this.state, this.next, record, record)) return system.failure(theta);
        stepper.theta = reached;
        if (!stepper.begin(this.next, record)) return system.failure(theta);
        system.keep();
        if (record) largestError = Math.max(largestError, stepper.error);
        [this.state, this.next] = [this.next, this.state];
        this.taken++;
        if (p < parts) observe?.(reached, this.state);
      }
      if (k < knots.length && mesh[i] === knots[k].angle) system.actOn(knots[k++].events);
      observe?.(mesh[i], this.state);
    }
    y.set(this.state.subarray(0, y.length));
    return { ok: true, largestError };
  }
}
