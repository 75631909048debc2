import type { CycleSystem } from '../cycle/system.ts';
import { AIR_INDEX, FUEL_INDEX, LIQUID_INDEX, PRODUCTS_INDEX } from '../gas/mixture.ts';
import { enthalpy } from '../gas/polynomial.ts';
import { findRoot } from '../numerics/find-root.ts';

/**
 * What a recorded period adds up to: integrals read from the accumulators, and the conservation defects.
 * Masses [kg], energies [J], per period.
 */
export class PeriodTotals {
  constructor(
    private readonly system: CycleSystem,
    private readonly records: Float64Array,
    private readonly began: Float64Array,
  ) {}

  /** Net mass of constituent k through an edge. */
  through(edge: number, k: number): number {
    const { system } = this;
    return this.records[system.edgesAt + edge * system.edges.stride + k];
  }

  massThrough(edge: number): number {
    let mass = 0;
    for (let k = 0; k < this.system.gas.set.count; k++) mass += this.through(edge, k);
    return mass;
  }

  /** Absolute enthalpy through an edge. */
  enthalpyThrough(edge: number): number {
    return this.through(edge, this.system.gas.set.count);
  }

  record(source: { readonly recordAt: number }, i: number): number {
    return this.records[source.recordAt + i];
  }

  /** Of the blowers of all stages: fluid work, heat of the casings; see BlowerFlow. */
  blowers(i: 0 | 1): number {
    const { blower, secondBlower } = this.system;
    return this.record(blower, i) + (secondBlower ? this.record(secondBlower, i) : 0);
  }

  sum(source: { readonly recordAt: number; readonly recordCount: number }): number {
    let total = 0;
    for (let i = 0; i < source.recordCount; i++) total += this.record(source, i);
    return total;
  }

  /**
   * Temperature at which what passed through an edge holds the enthalpy that passed, with `added` [J] on top [K].
   * Null where no net mass passed or no temperature from 150 to 3600 K fits.
   */
  temperatureThrough(edge: number, added = 0): number | null {
    const { constituents } = this.system.gas.set;
    const wanted = this.enthalpyThrough(edge) + added;
    const excess = (T: number) =>
      constituents.reduce((h, gas, k) => h + this.through(edge, k) * enthalpy(gas, T), -wanted);
    if (excess(150) * excess(3600) >= 0) return null;
    return findRoot(excess, 150, 3600);
  }

  /** Edges between the network and the outside, with +1 where they lead in. */
  boundary(): readonly { readonly edge: number; readonly inwards: number }[] {
    const { edges, gas } = this.system;
    const found: { edge: number; inwards: number }[] = [];
    for (let edge = 0; edge < edges.count; edge++) {
      const fromOutside = edges.from[edge] >= gas.dynamicCount;
      const toOutside = edges.to[edge] >= gas.dynamicCount;
      if (fromOutside !== toOutside) found.push({ edge, inwards: fromOutside ? 1 : -1 });
    }
    return found;
  }

  /** Mass that injection fed, and its enthalpy. */
  injected(): { readonly mass: number; readonly enthalpy: number } {
    const { passageInjection, cylinderInjection } = this.system;
    const source = passageInjection ?? cylinderInjection;
    const mass = source ? this.sum(source) : 0;
    return { mass, enthalpy: source ? mass * source.fuel.enthalpy : 0 };
  }

  /** Fuel fed, wherever and in whatever form. */
  fuelFed(): number {
    const { system } = this;
    const { throttle } = system.model.network.through;
    const liquid = system.gas.set.count > LIQUID_INDEX ? this.through(throttle, LIQUID_INDEX) : 0;
    return this.through(throttle, FUEL_INDEX) + liquid + this.injected().mass;
  }

  /** What burning, evaporation and injection made of each constituent. */
  private made(): number[] {
    const { model, burning, evaporating } = this.system;
    const { airFuelRatio, constituents } = model.mixture;
    const burned = this.sum(burning);
    const made = constituents.map(() => 0);
    made[AIR_INDEX] = -burned * airFuelRatio;
    made[FUEL_INDEX] = -burned;
    made[PRODUCTS_INDEX] = burned * (1 + airFuelRatio);
    if (evaporating) {
      const evaporated = this.sum(evaporating);
      made[FUEL_INDEX] += evaporated;
      made[LIQUID_INDEX] = this.injected().mass - evaporated;
    }
    return made;
  }

  /**
   * Conservation defects over the period:
   *
   *   defect = content at the end - content at the beginning - what came in across the boundary - what sources made
   *
   * mass and species over the most that passed any edge; energy over all enthalpy across the boundary, heat and work [-].
   * Numerics: accumulators take the same steps as the state, so what is left is round-off.
   */
  defects(): { mass: number; species: number; energy: number } {
    const { system, records, began } = this;
    const { gas, pistonWork, undersideWork, blowBy, cylinderWalls, nodeWalls, cooler } = system;
    const n = gas.set.count;
    const made = this.made();
    const injected = this.injected();
    const heatAndWork =
      injected.enthalpy +
      this.blowers(0) -
      this.blowers(1) -
      (cooler ? this.sum(cooler) : 0) -
      this.sum(pistonWork) -
      (undersideWork ? this.sum(undersideWork) : 0) -
      (blowBy ? this.sum(blowBy) : 0) -
      this.sum(cylinderWalls) +
      this.sum(nodeWalls);

    let massThrough = 0;
    for (let edge = 0; edge < system.edges.count; edge++)
      massThrough = Math.max(massThrough, Math.abs(this.massThrough(edge)));
    let massDefect = 0;
    let species = 0;
    let energy = 0;
    let energyThrough = 0;
    for (let k = 0; k <= n; k++) {
      let defect = 0;
      for (let node = 0; node < gas.dynamicCount; node++) {
        defect += records[node * gas.stride + k] - began[node * gas.stride + k];
      }
      for (const { edge, inwards } of this.boundary()) {
        const flow = this.through(edge, k);
        defect -= inwards * flow;
        if (k === n) energyThrough += Math.abs(flow);
      }
      if (k === n) energy = Math.abs(defect - heatAndWork);
      else {
        massDefect += defect;
        species = Math.max(species, Math.abs(defect - made[k]));
      }
    }
    energyThrough += Math.abs(heatAndWork) + Math.abs(this.sum(pistonWork));
    const share = (defect: number, throughput: number) => (defect === 0 ? 0 : defect / throughput);
    return {
      mass: share(Math.abs(massDefect - injected.mass), massThrough),
      species: share(species, massThrough),
      energy: share(energy, energyThrough),
    };
  }
}
