import { AIR_INDEX, FUEL_INDEX, LIQUID_INDEX } from '../../gas/mixture.ts';
import { restOfTurn } from '../../geometry/angles.ts';
import { TURN } from '../../units.ts';
import type { GasStates } from '../gas-states.ts';
import type { Instant, StepSource } from '../instant.ts';
import type { Memory } from '../memory.ts';
import type { InjectedFuel } from './passage-injection.ts';

export interface InjectedCylinder {
  readonly node: number;
  /** Crank angle at which injection begins, within one turn [rad]. */
  readonly beginAngle: number;
}

/**
 * Liquid fuel injected into every cylinder after its windows have shut, evenly over a span of crank angle:
 *
 *   m_f = max(0, F m_air - m_fuel)       all when the last window has shut; F: fuel per air [-], m [kg]
 *
 * Like burning, it is integrated exactly over each step, so that a coarse step still injects the right amount.
 *
 * Valid: fuel that is metered to what is shut in, as no injector knows it exactly; its own motion and pressure are left out.
 * Records the mass into each cylinder [kg].
 */
export class CylinderInjection implements StepSource {
  readonly recordCount: number;
  recordAt = 0;
  weight = 0;
  private readonly rate: Float64Array;

  constructor(
    private readonly cylinders: readonly InjectedCylinder[],
    /** Span of crank angle [rad]. */
    private readonly duration: number,
    readonly fuel: InjectedFuel,
    private readonly instant: Instant,
    private readonly memory: Memory,
    private readonly gas: GasStates,
  ) {
    this.recordCount = cylinders.length;
    this.rate = new Float64Array(cylinders.length);
  }

  /** Fixes what cylinder j will get from the gas now unpacked. */
  meter(j: number): void {
    const { gas, memory, fuel } = this;
    const { node } = this.cylinders[j];
    const base = node * gas.set.count;
    const lacking =
      fuel.fuelPerAir * gas.fraction[base + AIR_INDEX] -
      gas.fraction[base + FUEL_INDEX] -
      gas.fraction[base + LIQUID_INDEX];
    memory.setInjection(j, Math.max(0, gas.mass[node] * lacking));
  }

  prepare(): void {
    const { cylinders, instant, memory, duration } = this;
    const { theta, span, omega } = instant;
    for (let j = 0; j < cylinders.length; j++) {
      const since = restOfTurn(theta - cylinders[j].beginAngle);
      const share = within(since, span, duration) + within(since - TURN, span, duration);
      this.rate[j] = (memory.injection(j) * share * omega) / span;
    }
  }

  addTo(vector: Float64Array, record: boolean): void {
    const { cylinders, rate, gas, fuel, weight } = this;
    for (let j = 0; j < cylinders.length; j++) {
      if (rate[j] === 0) continue;
      const at = cylinders[j].node * gas.stride;
      const injected = weight * rate[j];
      vector[at + LIQUID_INDEX] += injected;
      vector[at + gas.set.count] += injected * fuel.enthalpy;
      if (record) vector[this.recordAt + j] += injected;
    }
  }
}

/** Share of an even span from 0 to `duration` that lies between `from` and `from + span` [-]. */
const within = (from: number, span: number, duration: number): number =>
  Math.max(0, Math.min(from + span, duration) - Math.max(from, 0)) / duration;
