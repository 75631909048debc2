import { SmoothOrifice } from '../../exchange/smooth-orifice.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement } from '../instant.ts';

/** An opening of constant size. */
export interface Opening {
  readonly edge: number;
  /** Discharge coefficient times area, with and against the edge's direction [m^2]. */
  readonly forward: number;
  readonly backward: number;
  /** Smoothing pressure, see SmoothOrifice [Pa]. */
  readonly smoothing: number;
}

/** Sets one edge's flow from its opening and the gas on both sides; what it carries is the bulk of the upstream node. */
export class OrificeFlow {
  private readonly orifice = new SmoothOrifice();

  constructor(
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {}

  /** Makes an opening that does not change. */
  open({ edge, forward, backward, smoothing }: Opening): void {
    const { edges } = this;
    edges.forward[edge] = forward;
    edges.backward[edge] = backward;
    edges.smoothing[edge] = smoothing;
  }

  /** @returns true where the flow runs with the edge */
  set(edge: number): boolean {
    const { gas, edges, orifice } = this;
    const from = edges.from[edge];
    const to = edges.to[edge];
    const withEdge = gas.pressure[from] >= gas.pressure[to];
    const up = withEdge ? from : to;
    const down = withEdge ? to : from;
    orifice.CdA = withEdge ? edges.forward[edge] : edges.backward[edge];
    orifice.p0 = gas.pressure[up];
    orifice.T0 = gas.temperature[up];
    orifice.R = gas.gasConstant[up];
    orifice.gamma = gas.gamma[up];
    orifice.p1 = gas.pressure[down];
    orifice.eps = edges.smoothing[edge];
    orifice.evaluate();
    if (withEdge) {
      edges.massFlow[edge] = orifice.flow;
      edges.slopeFrom[edge] = orifice.slopeUp;
      edges.slopeTo[edge] = orifice.slopeDown;
    } else {
      edges.massFlow[edge] = -orifice.flow;
      edges.slopeFrom[edge] = -orifice.slopeDown;
      edges.slopeTo[edge] = -orifice.slopeUp;
    }
    edges.carryBulk(edge, up);
    return withEdge;
  }
}

/** All openings of constant size: passage entries, blower clearances, collector outlets. */
export class Orifices implements FlowElement {
  private readonly flow: OrificeFlow;
  private readonly through: Int32Array;

  constructor(openings: readonly Opening[], gas: GasStates, edges: EdgeFlows) {
    this.flow = new OrificeFlow(gas, edges);
    this.through = Int32Array.from(openings, ({ edge }) => edge);
    for (const opening of openings) this.flow.open(opening);
  }

  setFlows(): void {
    for (let i = 0; i < this.through.length; i++) this.flow.set(this.through[i]);
  }
}
