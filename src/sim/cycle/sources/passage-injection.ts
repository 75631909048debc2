import { AIR_INDEX, FUEL_INDEX, LIQUID_INDEX } from '../../gas/mixture.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { Source } from '../instant.ts';

/** What is injected and how warm it is. */
export interface InjectedFuel {
  /** Fuel per kilogram of air [-]. */
  readonly fuelPerAir: number;
  /** Of the liquid, absolute [J/kg]. */
  readonly enthalpy: number;
}

/**
 * Liquid fuel injected at the mouth of every passage, as much as the air that enters still lacks:
 *
 *   mdot_f = mdot_entry max(0, c_air F - c_fuel)       while the flow runs into the passage; F: fuel per air [-]
 *
 * What was blown back into the plenum with fuel in it gets none a second time, so the mean is F to the net air.
 *
 * Numerics: what ImplicitPressures corrects of the entry's flow gets no fuel, so that the mean is off by a share that falls with the step:
 * 1.2e-3 for Caraway 1 at 5000 rpm, 1.5e-4 with a quarter of the step.
 *
 * Valid: a mean over the opening of a real injector, which sprays once a turn. Records the mass into each passage [kg].
 */
export class PassageInjection implements Source {
  readonly recordCount: number;
  recordAt = 0;

  constructor(
    private readonly entries: readonly number[],
    readonly fuel: InjectedFuel,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    this.recordCount = entries.length;
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { entries, edges, gas, fuel } = this;
    for (let i = 0; i < entries.length; i++) {
      const edge = entries[i];
      const flow = edges.massFlow[edge];
      const at = edge * edges.stride;
      const { carried } = edges;
      const lacking =
        carried[at + AIR_INDEX] * fuel.fuelPerAir - carried[at + FUEL_INDEX] - carried[at + LIQUID_INDEX];
      const injected = flow > 0 && lacking > 0 ? flow * lacking : 0;
      const into = edges.to[edge] * gas.stride;
      rates[into + LIQUID_INDEX] += injected;
      rates[into + gas.set.count] += injected * fuel.enthalpy;
      if (record) rates[this.recordAt + i] = injected;
    }
  }
}
