import type { CylinderGeometry } from '../geometry/build-geometry.ts';
import type { GasStates } from './gas-states.ts';

/**
 * Where every piston stands, and what follows from it: cylinder volumes and their rates (written into the gas),
 * uncovered window areas.
 *
 *   V = V_c + A x(theta),   dV/dt = A omega dx/dtheta      x: below own top dead centre [m], A: bore area [m^2]
 *
 * Numerics: x and its slope are tabulated, see PeriodicTable; window areas have kinks, which the schedule knows.
 */
export class Pistons {
  readonly travel: Float64Array;
  /** dx / dtheta [m/rad]. */
  readonly travelSlope: Float64Array;
  readonly exhaustArea: Float64Array;
  readonly transferArea: Float64Array;

  /** @param nodes - the cylinders' nodes, in the order of `cylinders` */
  constructor(
    readonly cylinders: readonly CylinderGeometry[],
    private readonly nodes: readonly number[],
    private readonly boreArea: number,
    private readonly gas: GasStates,
  ) {
    const n = cylinders.length;
    this.travel = new Float64Array(n);
    this.travelSlope = new Float64Array(n);
    this.exhaustArea = new Float64Array(n);
    this.transferArea = new Float64Array(n);
  }

  /** @param theta - crank angle [rad]; @param omega - crank speed [rad/s] */
  moveTo(theta: number, omega: number): void {
    const { cylinders, nodes, boreArea, gas } = this;
    for (let j = 0; j < cylinders.length; j++) {
      const cylinder = cylinders[j];
      const table = cylinder.travel;
      table.evaluate(theta);
      const x = table.value;
      this.travel[j] = x;
      this.travelSlope[j] = table.slope;
      gas.volume[nodes[j]] = cylinder.clearanceVolume + boreArea * x;
      gas.volumeRate[nodes[j]] = boreArea * table.slope * omega;
      const depth = cylinder.depthAtTdc + x;
      this.exhaustArea[j] = cylinder.exhaust.area(depth);
      this.transferArea[j] = cylinder.transfer.area(depth);
    }
  }
}
