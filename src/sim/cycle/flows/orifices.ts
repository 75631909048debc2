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

/** Sets one edge's flow from the gas on both sides; what it carries is the bulk of the upstream node. */
export class OrificeFlow {
  private readonly orifice = new SmoothOrifice();

  constructor(
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {}

  /** @returns true where the flow runs with the edge */
  set(edge: number, forward: number, backward: number, smoothing: number): boolean {
    const { gas, edges, orifice } = this;
    const from = edges.from[edge];
    const to = edges.to[edge];
    const withEdge = gas.pressure[from] >= gas.pressure[to];
    const up = withEdge ? from : to;
    const down = withEdge ? to : from;
    orifice.evaluate(
      withEdge ? forward : backward,
      gas.pressure[up],
      gas.temperature[up],
      gas.gasConstant[up],
      gas.gamma[up],
      gas.pressure[down],
      smoothing,
    );
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

  constructor(
    private readonly openings: readonly Opening[],
    gas: GasStates,
    edges: EdgeFlows,
  ) {
    this.flow = new OrificeFlow(gas, edges);
  }

  setFlows(): void {
    for (let i = 0; i < this.openings.length; i++) {
      const o = this.openings[i];
      this.flow.set(o.edge, o.forward, o.backward, o.smoothing);
    }
  }
}
