import type { Source } from '../instant.ts';
import type { Pistons } from '../pistons.ts';
import type { CylinderWalls } from './cylinder-walls.ts';

/**
 * Takes no part: records, per cylinder, the coefficient of the gas side [W/(m^2 K)] and that times the uncovered liner's area
 * [W/K]. Their means say how the heat answers to the temperature of a wall.
 */
export class FilmMeans implements Source {
  readonly recordCount: number;
  recordAt = 0;

  constructor(
    private readonly walls: CylinderWalls,
    private readonly pistons: Pistons,
  ) {
    this.recordCount = 2 * walls.coefficient.length;
  }

  addTo(rates: Float64Array, record: boolean): void {
    if (!record) return;
    const { coefficient, linerPerimeter } = this.walls;
    for (let j = 0; j < coefficient.length; j++) {
      const at = this.recordAt + 2 * j;
      rates[at] = coefficient[j];
      rates[at + 1] = coefficient[j] * linerPerimeter * this.pistons.travel[j];
    }
  }
}
