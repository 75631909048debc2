import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement, Instant, Source } from '../instant.ts';

/**
 * A blower in the network, of any kind: sets the flow from inlet box to plenum and adds its work to the gas on both sides.
 * Records: fluid work, heat of the casing [W].
 */
export abstract class BlowerFlow implements FlowElement, Source {
  readonly recordCount = 2;
  recordAt = 0;

  constructor(
    protected readonly edge: number,
    /** Share of the fluid work that the casing gives away [-]. */
    protected readonly casingHeatShare: number,
    protected readonly instant: Instant,
    protected readonly gas: GasStates,
    protected readonly edges: EdgeFlows,
  ) {}

  /** At the present instant, the casing's share included [W]. */
  protected abstract readonly fluidWork: number;
  /** Work that the gas of the plenum, and that of the inlet box, takes up, less the casing's share [W]. */
  abstract readonly powerIntoPlenum: number;
  abstract readonly powerIntoBox: number;
  abstract setFlows(): void;

  /** Fluid torque that the blowers ask of the crank at the present instant, gears apart [N m]. */
  get fluidTorque(): number {
    return this.fluidWork / this.instant.omega;
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { gas, edges, edge, fluidWork } = this;
    rates[edges.to[edge] * gas.stride + gas.set.count] += this.powerIntoPlenum;
    rates[edges.from[edge] * gas.stride + gas.set.count] += this.powerIntoBox;
    if (record) {
      rates[this.recordAt] = fluidWork;
      rates[this.recordAt + 1] = this.casingHeatShare * fluidWork;
    }
  }
}
