import type { Cooler as Dimensions } from '../../engine.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement, Source } from '../instant.ts';
import { OrificeFlow } from './orifices.ts';

/**
 * Cooler between two stages: an opening of its pressure loss, and the gas behind it nearer to the coolant.
 *
 *   dp = K rho w^2 / 2     that of an opening of  CdA = A / sqrt(K)
 *   Q  = |m| eps cp (T_up - T_coolant)      taken from the gas behind it
 *
 * K loss factor, eps effectiveness [-], A bore's area [m^2], cp of the gas that comes [J/(kg K)]. Records: heat out of the gas [W].
 *
 * Valid: effectiveness the same at all flows, coolant of one temperature (its heat capacity rate far above the gas's); no metal that
 * stores heat. Loss as the arrester's: small against the pressure. Source: Incropera & DeWitt, Fundamentals of Heat and Mass
 * Transfer, 2002, ch. 11.
 */
export class Cooler implements FlowElement, Source {
  readonly recordCount = 1;
  recordAt = 0;
  private readonly flow: OrificeFlow;
  private behind = 0;
  private heat = 0;

  /** @param smoothing - see SmoothOrifice [Pa] */
  constructor(
    private readonly edge: number,
    CdA: number,
    private readonly cooler: Pick<Dimensions, 'effectiveness' | 'coolantTemperature'>,
    smoothing: number,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    this.flow = new OrificeFlow(gas, edges);
    this.flow.open({ edge, forward: CdA, backward: CdA, smoothing });
  }

  /** Out of the gas that goes through, at the present instant [W]. */
  get heatOut(): number {
    return this.heat;
  }

  setFlows(): void {
    const { edges, edge, gas, cooler } = this;
    const withEdge = this.flow.set(edge);
    const up = withEdge ? edges.from[edge] : edges.to[edge];
    this.behind = withEdge ? edges.to[edge] : edges.from[edge];
    const cp = (gas.gamma[up] * gas.gasConstant[up]) / (gas.gamma[up] - 1);
    this.heat =
      Math.abs(edges.massFlow[edge]) *
      cooler.effectiveness *
      cp *
      (gas.temperature[up] - cooler.coolantTemperature);
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { gas } = this;
    rates[this.behind * gas.stride + gas.set.count] -= this.heat;
    if (record) rates[this.recordAt] = this.heat;
  }
}
