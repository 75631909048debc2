import { hohenbergCoefficient } from '../../heat-transfer/hohenberg.ts';
import type { GasStates } from '../gas-states.ts';
import type { Film } from './film.ts';

/** Hohenberg's coefficient, see heat-transfer/hohenberg.ts. */
export class HohenbergFilm implements Film {
  constructor(
    private readonly factor: number,
    private readonly pistonSpeed: number,
    private readonly nodes: readonly number[],
    private readonly gas: GasStates,
  ) {}

  write(h: Float64Array): void {
    const { factor, pistonSpeed, nodes, gas } = this;
    for (let j = 0; j < nodes.length; j++) {
      const node = nodes[j];
      h[j] = hohenbergCoefficient(
        factor,
        gas.volume[node],
        gas.pressure[node],
        gas.temperature[node],
        pistonSpeed,
      );
    }
  }
}
