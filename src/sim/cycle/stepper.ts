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
   * @param judge - whether the error is wanted
   * @returns the error of the step relative to each node's mass and thermal energy, largest of all nodes, 0 where not wanted;
   *          Infinity where the step leads out of range
   */
  step(
    theta: number,
    span: number,
    y: Float64Array,
    next: Float64Array,
    record: boolean,
    judge: boolean,
  ): number {
    const { system, method, stages, argument, rates, firstRates } = this;
    const { stages: s, a, c, d, m, e, alpha, gamma } = method;
    const size = record ? system.size : system.stateSize;
    const h = span / system.omega;
    const w = gamma * h;
    system.burning.prepare(theta, span);
    system.implicit.factor(w);
    for (let i = 0; i < s; i++) {
      let f = firstRates;
      if (i > 0) {
        combine(argument, y, 1, stages, a, i * s, i, 1, size);
        if (!system.rates(theta + alpha[i] * span, argument, rates, record)) return Infinity;
        f = rates;
      }
      const u = stages[i];
      combine(u, f, w, stages, c, i * s, i, gamma, size);
      system.burning.addTo(u, w, record);
      system.implicit.solve(u, w * d[i] * h, record, system.stateSize);
    }
    combine(next, y, 1, stages, m, 0, s, 1, size);
    return judge ? system.errorNorm(stages, e) : 0;
  }
}

/** out = share y + scale * sum over j < count of weights[first + j] stages[j] */
function combine(
  out: Float64Array,
  y: Float64Array,
  share: number,
  stages: readonly Float64Array[],
  weights: Float64Array,
  first: number,
  count: number,
  scale: number,
  size: number,
): void {
  if (count === 0) {
    for (let k = 0; k < size; k++) out[k] = share * y[k];
    return;
  }
  const weight = scale * weights[first];
  const u = stages[0];
  for (let k = 0; k < size; k++) out[k] = share * y[k] + weight * u[k];
  for (let j = 1; j < count; j++) {
    const weight = scale * weights[first + j];
    if (weight === 0) continue;
    const u = stages[j];
    for (let k = 0; k < size; k++) out[k] += weight * u[k];
  }
}
