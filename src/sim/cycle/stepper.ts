import type { RosenbrockW } from '../numerics/rosenbrock-w.ts';
import { stepError } from './step-error.ts';
import type { CycleSystem } from './system.ts';

/**
 * One step of the network in crank angle, linearly implicit in the pressures (see rosenbrock-w.ts and
 * implicit-pressures.ts). Buffers belong to the stepper; a step allocates nothing, and what would be passed as a double goes
 * through fields, because a compiler boxes it where it does not inline the call.
 */
export class Stepper {
  /** Where the step begins [rad], and its length in crank angle, > 0 [rad]. */
  theta = 0;
  span = 0;
  /** Error of the last step that was judged, relative to each node's mass and thermal energy, largest of all nodes. */
  error = 0;
  private readonly stages: Float64Array[];
  private readonly couplings: Float64Array;
  private readonly argument: Float64Array;
  private readonly firstRates: Float64Array;
  private readonly rates: Float64Array;

  constructor(
    private readonly system: CycleSystem,
    private readonly method: RosenbrockW,
  ) {
    const n = system.size;
    this.stages = Array.from({ length: method.stages }, () => new Float64Array(n));
    this.couplings = method.c.map((c) => method.gamma * c);
    this.argument = new Float64Array(n);
    this.firstRates = new Float64Array(n);
    this.rates = new Float64Array(n);
  }

  /**
   * Makes (theta, y) the point to step from. Linearises there; a repeated `step` with another length reuses it.
   * @returns false where the state cannot be unpacked
   */
  begin(y: Float64Array, record: boolean): boolean {
    const { system } = this;
    system.instant.theta = this.theta;
    if (!system.rates(y, this.firstRates, record) || !system.gas.inRange()) return false;
    system.implicit.freeze();
    system.evaporating?.freeze();
    system.zoneExchange?.freeze();
    return true;
  }

  /**
   * Steps over `span` from where it began.
   *
   * @param y     - state there
   * @param next  - overwritten with the state at theta + span
   * @param judge - whether `error` is wanted
   * @returns false where the step leads out of range
   */
  step(y: Float64Array, next: Float64Array, record: boolean, judge: boolean): boolean {
    const { system, method, stages, couplings, argument, rates, firstRates, theta, span } = this;
    const { stages: s, a, d, m, e, alpha, gamma } = method;
    const { instant, stepSources, evaporating, zoneExchange, implicit, steppedSize, edgesAt } = system;
    const size = record ? system.size : steppedSize;
    const h = span / system.omega;
    const w = gamma * h;
    instant.theta = theta;
    instant.span = span;
    for (let j = 0; j < stepSources.length; j++) stepSources[j].prepare();
    implicit.weight = w;
    implicit.factor();
    for (let i = 0; i < s; i++) {
      let f = firstRates;
      if (i > 0) {
        for (let k = 0; k < size; k++) argument[k] = y[k];
        accumulate(argument, stages, a, i * s, i, size);
        instant.theta = theta + alpha[i] * span;
        if (!system.rates(argument, rates, record)) return false;
        f = rates;
      }
      const u = stages[i];
      for (let k = 0; k < size; k++) u[k] = w * f[k];
      accumulate(u, stages, couplings, i * s, i, size);
      for (let j = 0; j < stepSources.length; j++) {
        stepSources[j].weight = w;
        stepSources[j].addTo(u, record);
      }
      if (evaporating) {
        evaporating.weight = w;
        evaporating.relax(u, record);
      }
      implicit.drift = w * d[i] * h;
      implicit.solve(u, record, edgesAt);
      if (zoneExchange !== null) zoneExchange.follow(u, implicit.corrections);
    }
    for (let k = 0; k < size; k++) next[k] = y[k];
    accumulate(next, stages, m, 0, s, size);
    if (judge) this.error = stepError(system, stages, e);
    return true;
  }
}

/** out += sum over j < count of weights[first + j] stages[j] */
function accumulate(
  out: Float64Array,
  stages: readonly Float64Array[],
  weights: Float64Array,
  first: number,
  count: number,
  size: number,
): void {
  for (let j = 0; j < count; j++) {
    const weight = weights[first + j];
    if (weight === 0) continue;
    const u = stages[j];
    for (let k = 0; k < size; k++) out[k] += weight * u[k];
  }
}
