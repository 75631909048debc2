import type { GasStates } from '../gas-states.ts';
import type { Source } from '../instant.ts';

/**
 * Work that the gas does on the pistons: -p dV/dt into each node, p absolute [Pa], dV/dt [m^3/s]. Records p dV/dt of each [W].
 * Above them: one node for each cylinder. Below: the crankcase, whose volume all of them move; where it takes no part, its pressure is
 * constant and does no net work over a turn.
 */
export class PistonWork implements Source {
  readonly recordCount: number;
  recordAt = 0;

  constructor(
    private readonly nodes: readonly number[],
    private readonly gas: GasStates,
  ) {
    this.recordCount = nodes.length;
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { nodes, gas } = this;
    for (let j = 0; j < nodes.length; j++) {
      const node = nodes[j];
      const power = gas.pressure[node] * gas.volumeRate[node];
      rates[node * gas.stride + gas.set.count] -= power;
      if (record) rates[this.recordAt + j] = power;
    }
  }
}
