import type { GasStates } from '../gas-states.ts';
import type { Source } from '../instant.ts';

/** Touches nothing: records pressure and temperature of nodes, so that their time means come out of the same steps. */
export class Gauges implements Source {
  readonly recordCount: number;
  recordAt = 0;

  constructor(
    readonly nodes: readonly number[],
    private readonly gas: GasStates,
  ) {
    this.recordCount = 2 * nodes.length;
  }

  addTo(rates: Float64Array, record: boolean): void {
    if (!record) return;
    for (let i = 0; i < this.nodes.length; i++) {
      rates[this.recordAt + 2 * i] = this.gas.pressure[this.nodes[i]];
      rates[this.recordAt + 2 * i + 1] = this.gas.temperature[this.nodes[i]];
    }
  }
}
