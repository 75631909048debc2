import type { CycleSystem } from '../cycle/system.ts';

/** How hot what leaves a cylinder is; null where none leaves [K]. */
export interface ExhaustGas {
  /** Of all that leaves before the transfer windows open, by its enthalpy. */
  readonly blowdown: number | null;
  /** At the exhaust windows, mean over the time in which gas leaves. */
  readonly timeMean: number | null;
}

/**
 * Watches a recorded period for the temperature of what leaves through the exhaust windows:
 *
 *   blowdown    sum over k of m_k h_k(T) = H      m_k, H: what left while the piston came down on shut transfer windows
 *   time mean   integral of T dtheta over integral of dtheta, while gas leaves      T of the gas that leaves at that moment
 *
 * Numerics: blowdown from what the steps record, so to round-off, but for the one step in which the transfer opens, which is left out; time
 * mean by trapezia. T by Newton from the cylinder's own.
 */
export class ExhaustWatch {
  private readonly left: readonly Float64Array[];
  private readonly before: readonly Float64Array[];
  private readonly leaving: Float64Array;
  private readonly span: Float64Array;
  private readonly weighed: Float64Array;
  private theta = NaN;
  private readonly energies: Float64Array;
  private readonly heats: Float64Array;

  constructor(private readonly system: CycleSystem) {
    const { gas, model } = system;
    const count = model.network.at.cylinders.length;
    const each = () => Array.from({ length: count }, () => new Float64Array(gas.stride));
    this.left = each();
    this.before = each();
    this.leaving = new Float64Array(count);
    this.span = new Float64Array(count);
    this.weighed = new Float64Array(count);
    this.energies = new Float64Array(gas.set.count);
    this.heats = new Float64Array(gas.set.count);
  }

  /** Takes down the present instant; `y` is state and records so far. */
  note(theta: number, y: Float64Array): void {
    const { edges, gas, pistons, model, edgesAt } = this.system;
    const { exhausts } = model.network.through;
    const passed = theta - this.theta;
    for (let j = 0; j < exhausts.length; j++) {
      const edge = exhausts[j]!;
      const at = edge * edges.stride;
      const before = this.before[j]!;
      const coming =
        pistons.exhaustArea[j]! > 0 && pistons.transferArea[j] === 0 && pistons.travelSlope[j]! > 0;
      const left = this.left[j]!;
      // At the opening itself the area is still nothing: a step counts by its end.
      for (let k = 0; k < edges.stride; k++) {
        const now = y[edgesAt + at + k]!;
        if (coming && passed > 0) left[k]! += now - before[k]!;
        before[k] = now;
      }
      const node = model.network.at.cylinders[j]!;
      const T = edges.massFlow[edge]! > 0 ? this.temperature(edges.carried, at, gas.temperature[node]!) : NaN;
      const mean = (T + this.leaving[j]!) / 2;
      if (passed > 0 && mean === mean) {
        this.span[j]! += passed;
        this.weighed[j]! += passed * mean;
      }
      this.leaving[j] = T;
    }
    this.theta = theta;
  }

  figures(j: number): ExhaustGas {
    const { gas } = this.system;
    const left = this.left[j]!;
    let mass = 0;
    for (let k = 0; k < gas.set.count; k++) mass += left[k]!;
    return {
      blowdown: mass > 0 ? this.temperature(left, 0, 1000) : null,
      timeMean: this.span[j]! > 0 ? this.weighed[j]! / this.span[j]! : null,
    };
  }

  /** Temperature at which constituents at `at` hold the enthalpy that follows them. */
  private temperature(of: Float64Array, at: number, start: number): number {
    const { set } = this.system.gas;
    const { energies, heats } = this;
    const n = set.count;
    let T = start;
    for (let i = 0; i < 20; i++) {
      set.evaluate(T, energies, heats, 0);
      let h = 0;
      let cp = 0;
      for (let k = 0; k < n; k++) {
        const R = set.gasConstants[k]!;
        h += of[at + k]! * (energies[k]! + R * T);
        cp += of[at + k]! * (heats[k]! + R);
      }
      const step = (of[at + n]! - h) / cp;
      T += step;
      if (Math.abs(step) < 1e-6 * T) break;
    }
    return T;
  }
}
