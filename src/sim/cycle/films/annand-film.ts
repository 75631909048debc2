import { annandCoefficient } from '../../heat-transfer/annand.ts';
import type { GasStates } from '../gas-states.ts';
import type { Film } from './film.ts';

/** Annand's coefficient, see heat-transfer/annand.ts. */
export class AnnandFilm implements Film {
  constructor(
    private readonly a: number,
    private readonly b: number,
    private readonly bore: number,
    private readonly pistonSpeed: number,
    private readonly nodes: readonly number[],
    private readonly gas: GasStates,
  ) {}

  write(h: Float64Array): void {
    const { a, b, bore, pistonSpeed, nodes, gas } = this;
    for (let j = 0; j < nodes.length; j++) {
      const node = nodes[j];
      h[j] = annandCoefficient(
        a,
        b,
        bore,
        gas.mass[node] / gas.volume[node],
        gas.temperature[node],
        pistonSpeed,
      );
    }
  }
}
