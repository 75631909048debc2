import type { GasStates } from '../gas-states.ts';
import type { Source } from '../instant.ts';

export interface NodeWall {
  readonly node: number;
  /** Coefficient times area [W/K]. */
  readonly conductance: number;
  readonly temperature: number;
}

/**
 * Heat between gas and walls of box, plenum, passages and collectors. Records it, into the gas [W].
 *
 *   Qdot = G (T_wall - T)        G: coefficient times area [W/K]
 *
 * Valid: G belongs to the mean design flow and is held over the period; back-flow and pulsation are not seen.
 * Source: see heat-transfer/tube-nusselt.ts.
 */
export class NodeWalls implements Source {
  readonly recordCount: number;
  recordAt = 0;

  constructor(
    readonly walls: readonly NodeWall[],
    private readonly gas: GasStates,
  ) {
    this.recordCount = walls.length;
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { walls, gas } = this;
    for (let i = 0; i < walls.length; i++) {
      const { node, conductance, temperature } = walls[i];
      const heat = conductance * (temperature - gas.temperature[node]);
      rates[node * gas.stride + gas.set.count] += heat;
      if (record) rates[this.recordAt + i] = heat;
    }
  }
}
