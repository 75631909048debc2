import type { RosenbrockW } from '../numerics/rosenbrock-w.ts';
import type { CycleSystem } from './system.ts';

/**
 * One step of the network in crank angle, linearly implicit in the pressures (see rosenbrock-w.ts and
 * implicit-pressures.ts). Buffers belong to the stepper; a step allocates nothing.
 */
export class Stepper {
  private readonly stages: Float64Array[];
  private readonly argument: Float64Array;
  private readonly firstRates: Float64Array;
  private readonly rates: Float64Array;

  constructor(
    private readonly system: CycleSystem,
    private readonly method: RosenbrockW,
  ) {
    const n = system.size;
    this.stages = Array.from({ length: method.stages }, () => new Float64Array(n));
    this.argument = new Float64Array(n);
    this.firstRates = new Float64Array(n);
    this.rates = new Float64Array(n);
  }

  /**
   * Makes (theta, y) the point to step from. Linearises there; a repeated `step` with another length reuses it.
   * @returns false where the state cannot be unpacked
   */
  begin(theta: number, y: Float64Array, record: boolean): boolean {
    if (!this.system.rates(theta, y, this.firstRates, record) || !this.system.gas.inRange()) return false;
    this.system.implicit.freeze();
    return true;
  }

  /**
   * @param theta - crank angle at the start of the step [rad]
   * @param span  - length of the step in crank angle, > 0 [rad]
   * @param y     - state there
   * @param next  - overwritten with the state at theta + span
   * @returns the error of the step relative to each node's mass and thermal energy, largest of all nodes; Infinity where
   *          the step leads out of range
   */
  step(theta: number, span: number, y: Float64Array, next: Float64Array, record: boolean): number {
    const { system, method, stages, argument, rates, firstRates } = this;
    const { stages: s, a, c, d, m, e, alpha, gamma } = method;
    const size = record ? system.size : system.stateSize;
    const h = span / system.omega;
    const w = gamma * h;
    system.burning.prepare(theta, span);
    system.implicit.factor(w);
    for (let i = 0; i < s; i++) {
      const u = stages[i];
      let f = firstRates;
      if (i > 0) {
        combine(argument, y, stages, a, i * s, i, size);
        if (!system.rates(theta + alpha[i] * span, argument, rates, record)) return Infinity;
        f = rates;
      }
      for (let k = 0; k < size; k++) u[k] = w * f[k];
      system.burning.addTo(u, w, record);
      for (let j = 0; j < i; j++) {
        const factor = gamma * c[i * s + j];
        if (factor === 0) continue;
        const earlier = stages[j];
        for (let k = 0; k < size; k++) u[k] += factor * earlier[k];
      }
      system.implicit.addDrift(u, w * d[i] * h, record, system.stateSize);
      system.implicit.solve(u, record, system.stateSize);
    }
    combine(next, y, stages, m, 0, s, size);
    return system.errorNorm(stages, e);
  }
}

/** out = y + sum over j < count of weights[first + j] stages[j] */
function combine(
  out: Float64Array,
  y: Float64Array,
  stages: readonly Float64Array[],
  weights: Float64Array,
  first: number,
  count: number,
  size: number,
): void {
  for (let k = 0; k < size; k++) out[k] = y[k];
  for (let j = 0; j < count; j++) {
    const weight = weights[first + j];
    if (weight === 0) continue;
    const u = stages[j];
    for (let k = 0; k < size; k++) out[k] += weight * u[k];
  }
}
