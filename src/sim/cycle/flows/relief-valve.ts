import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement } from '../instant.ts';
import { OrificeFlow } from './orifices.ts';

/**
 * Spring-loaded valve from the plenum: closed below the cracking pressure difference, its area growing in proportion
 * from there to fully open. It does not let gas back in.
 *
 *   CdA = CdA_full min( (dp - dp_crack) / (dp_full - dp_crack), 1 )     dp = p_plenum - p_ambient > dp_crack
 *
 * Valid: no inertia, no hysteresis, no flutter: a real valve opens later and shuts lower.
 * Numerics: slopes hold how the lift answers to pressure, besides the chord of the flow.
 */
export class ReliefValve implements FlowElement {
  private readonly flow: OrificeFlow;

  /**
   * @param fullArea  - discharge coefficient times area, fully open [m^2]
   * @param cracking  - pressure difference at which it begins to open [Pa]
   * @param fullOpen  - pressure difference at which it is fully open, > cracking [Pa]
   * @param smoothing - see SmoothOrifice [Pa]
   */
  constructor(
    private readonly edge: number,
    private readonly fullArea: number,
    private readonly cracking: number,
    private readonly fullOpen: number,
    smoothing: number,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    this.flow = new OrificeFlow(gas, edges);
    this.flow.open({ edge, forward: 0, backward: 0, smoothing });
  }

  setFlows(): void {
    const { edges, edge, gas } = this;
    const dp = gas.pressure[edges.from[edge]] - gas.pressure[edges.to[edge]];
    const lift = (dp - this.cracking) / (this.fullOpen - this.cracking);
    if (lift <= 0) {
      edges.close(edge);
      return;
    }
    edges.forward[edge] = this.fullArea * Math.min(lift, 1);
    this.flow.set(edge);
    if (lift < 1) {
      const opening = edges.massFlow[edge] / (lift * (this.fullOpen - this.cracking));
      edges.slopeFrom[edge] += opening;
      edges.slopeTo[edge] -= opening;
    }
  }
}
