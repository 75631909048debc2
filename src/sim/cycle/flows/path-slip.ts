import { thinGapFlow } from '../../blower/slip/thin-gap.ts';
import { openGap } from '../../blower/slip/warm-gap.ts';
import type { WarmGap } from '../../blower/slip/warm-gap.ts';
import { SmoothOrifice } from '../../exchange/smooth-orifice.ts';
import { gasViscosity } from '../../heat-transfer/gas-transport.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement } from '../instant.ts';

/** One way back through the clearances of all blowers. */
export interface SlipPath {
  /** Across the flow, all blowers together [m]. */
  readonly width: number;
  /** Along the flow where the gap is thin [m]. */
  readonly land: number;
  readonly gap: WarmGap;
}

/**
 * Slip of displacement blowers by path: tips, mesh, ends, each limited by its throat or by friction in its thin gap.
 *
 *   m = sum of (m_o^-4 + m_v^-4)^(-1/4)      m_o orifice of width x gap, m_v thin flat gap
 *
 * The smaller of the two, rounded where they are alike: 16 % below either where they are equal, 1 % where one is 2.2 times the other.
 * Below some 10 kPa friction wins in gaps of 0.05 mm, so that slip falls with the pressure itself, not with its root.
 *
 * Valid: each path by itself from plenum to inlet box; pockets between them are not resolved. The gap follows the temperature of
 * the plenum's gas at once, where metal would follow its mean: a ripple of 5 K moves a gap of 0.05 mm by some 3 %.
 * Numerics: slopes hold gap, temperature and viscosity.
 */
export class PathSlip implements FlowElement {
  private readonly orifice = new SmoothOrifice();

  /**
   * @param discharge - coefficient of the throats [-]
   * @param smoothing - see SmoothOrifice [Pa]
   */
  constructor(
    private readonly edge: number,
    private readonly paths: readonly SlipPath[],
    private readonly discharge: number,
    private readonly smoothing: number,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {}

  setFlows(): void {
    const { gas, edges, edge, orifice, paths, discharge } = this;
    const plenum = edges.from[edge];
    const box = edges.to[edge];
    const withEdge = gas.pressure[plenum] >= gas.pressure[box];
    const up = withEdge ? plenum : box;
    const down = withEdge ? box : plenum;
    const p0 = gas.pressure[up];
    const p1 = gas.pressure[down];
    const RT = gas.gasConstant[up] * gas.temperature[up];
    const viscosity = gasViscosity(gas.temperature[up]);
    orifice.CdA = discharge;
    orifice.p0 = p0;
    orifice.T0 = gas.temperature[up];
    orifice.R = gas.gasConstant[up];
    orifice.gamma = gas.gamma[up];
    orifice.p1 = p1;
    orifice.eps = this.smoothing;
    orifice.evaluate();
    let flow = 0;
    let slopeUp = 0;
    let slopeDown = 0;
    for (let i = 0; i < paths.length; i++) {
      const { width, land, gap } = paths[i];
      const open = openGap(gap, gas.temperature[plenum]);
      const area = width * open;
      // Both fall to nothing together: their ratio is that of their slopes there.
      const thinSlope = thinGapFlow(width, open, land, 1, 0, RT, viscosity);
      const thin = thinSlope * (p0 * p0 - p1 * p1);
      const ratio =
        thin > 0 ? (area * orifice.flow) / thin : (-area * orifice.slopeDown) / (2 * thinSlope * p1);
      const r4 = ratio * ratio * ratio * ratio;
      const share = 1 / Math.sqrt(Math.sqrt(1 + r4));
      const ofOrifice = share / (1 + r4);
      const ofThin = ofOrifice * r4 * ratio;
      flow += share * area * orifice.flow;
      slopeUp += ofOrifice * area * orifice.slopeUp + ofThin * 2 * thinSlope * p0;
      slopeDown += ofOrifice * area * orifice.slopeDown - ofThin * 2 * thinSlope * p1;
    }
    edges.massFlow[edge] = withEdge ? flow : -flow;
    edges.slopeFrom[edge] = withEdge ? slopeUp : -slopeDown;
    edges.slopeTo[edge] = withEdge ? slopeDown : -slopeUp;
    edges.carryBulk(edge, up);
  }
}
