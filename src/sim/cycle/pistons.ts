import type { CylinderGeometry } from '../geometry/build-geometry.ts';
import type { GasStates } from './gas-states.ts';

/**
 * Where every piston stands, and what follows from it: cylinder volumes and their rates (written into the gas),
 * uncovered window areas and how fast they open, and what the undersides do to the crankcase's volume.
 *
 *   V = V_c + A x(theta),   dV/dt = A omega dx/dtheta      x: below own top dead centre [m], A: bore area [m^2]
 *   dA_w/dt = width omega dx/dtheta                        width: of the windows at the crown's edge [m]
 *   V_case = V_mid + A sum (s/2 - x)                       s: stroke [m]; see underside-volume.ts
 *
 * Numerics: x and its slope are tabulated, see PeriodicTable; window areas have kinks, which the step's error sees.
 */
export class Pistons {
  readonly travel: Float64Array;
  /** dx / dtheta [m/rad]. */
  readonly travelSlope: Float64Array;
  readonly exhaustArea: Float64Array;
  readonly transferArea: Float64Array;
  /** dA_w / dt [m^2/s]. */
  readonly exhaustOpening: Float64Array;
  readonly transferOpening: Float64Array;
  private stands = NaN;
  /** Node that the undersides work on, and its volume with every piston at the top [m^3]; -1 for none. */
  private crankcase = -1;
  private crankcaseAtTop = 0;

  /** @param nodes - the cylinders' nodes, in the order of `cylinders`; @param omega - crank speed [rad/s] */
  constructor(
    readonly cylinders: readonly CylinderGeometry[],
    private readonly nodes: readonly number[],
    private readonly boreArea: number,
    private readonly omega: number,
    private readonly gas: GasStates,
  ) {
    const n = cylinders.length;
    this.travel = new Float64Array(n);
    this.travelSlope = new Float64Array(n);
    this.exhaustArea = new Float64Array(n);
    this.transferArea = new Float64Array(n);
    this.exhaustOpening = new Float64Array(n);
    this.transferOpening = new Float64Array(n);
  }

  /** Lets the undersides work on a node. @param volume - of it, with every piston half way down [m^3] */
  workOn(node: number, volume: number): void {
    this.crankcase = node;
    this.crankcaseAtTop = this.cylinders.reduce(
      (total, { stroke }) => total + 0.5 * this.boreArea * stroke,
      volume,
    );
    this.stands = NaN;
  }

  /** @param theta - crank angle [rad] */
  moveTo(theta: number): void {
    if (theta === this.stands) return; // the last stage of a step ends where the next begins
    this.stands = theta;
    const { cylinders, nodes, boreArea, omega, gas } = this;
    let depth = 0;
    let falling = 0;
    for (let j = 0; j < cylinders.length; j++) {
      const cylinder = cylinders[j];
      const table = cylinder.travel;
      table.evaluate(theta);
      const x = table.value;
      this.travel[j] = x;
      this.travelSlope[j] = table.slope;
      depth += x;
      falling += table.slope;
      gas.volume[nodes[j]] = cylinder.clearanceVolume + boreArea * x;
      const speed = table.slope * omega;
      gas.volumeRate[nodes[j]] = boreArea * speed;
      const { exhaust, transfer } = cylinder;
      exhaust.depth = cylinder.depthAtTdc + x;
      exhaust.uncover();
      this.exhaustArea[j] = exhaust.openArea;
      this.exhaustOpening[j] = speed * exhaust.openWidth;
      transfer.depth = exhaust.depth;
      transfer.uncover();
      this.transferArea[j] = transfer.openArea;
      this.transferOpening[j] = speed * transfer.openWidth;
    }
    if (this.crankcase >= 0) {
      gas.volume[this.crankcase] = this.crankcaseAtTop - boreArea * depth;
      gas.volumeRate[this.crankcase] = -boreArea * omega * falling;
    }
  }
}
