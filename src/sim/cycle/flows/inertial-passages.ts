import { SmoothOrifice } from '../../exchange/smooth-orifice.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement, Source } from '../instant.ts';

/** A passage whose gas has inertia. */
export interface InertialPassage {
  readonly edge: number;
  /** Discharge coefficient times area of what its flow loses pressure by, with and against the edge [m^2], > 0. */
  readonly forward: number;
  readonly backward: number;
  /** Area over length of the column of gas [m]. */
  readonly areaPerLength: number;
  /** Flow that it is there for: its errors and changes are judged by it [kg/s]. */
  readonly scale: number;
}

/** Share of the scale within which a flow counts as about to turn, see EdgeFlows.turning [-]. */
const TURNING = 0.1;
/** Pressure drop over pressure below which the gas is taken as incompressible [-]. */
const INCOMPRESSIBLE = 1e-9;

/**
 * Passages that own a state, the mass flow of their gas, which the pressures at both ends speed up and its own loss slows down:
 *
 *   d mdot / dt = (A/L) ( p_from - p_to - K mdot |mdot| )
 *   K = dp / mdot_o(dp)^2      mdot_o: the isentropic orifice of its losses, dp: the drop in the direction of the flow, where there is one
 *   K = R T / (2 p CdA^2)      where the flow runs on against the pressures
 *
 * A, L area and length of the column [m^2, m]; K [Pa s^2/kg^2]; R T, p of the volume that the gas comes from. At rest the flow is that
 * of the orifice, choking included, and so it is at any time where L tends to nothing.
 *
 * Valid: the column moves as one, so its length is far below the waves that pass it: the time of a wave to and fro, 2 L/c, small against
 * that in which pressures change. No friction beyond the loss; the gas in the column is not weighed, so a volume should hold it.
 * Numerics: state, loss and slopes are smooth where the flow turns. ImplicitPressures steps flow and pressures together.
 * Source: lumped momentum equation, Blevins, Formulas for Natural Frequency and Mode Shape, 1979, ch. 13 (resonator with a neck);
 * Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, vol. 2, 1954, ch. 23, for what it leaves out.
 */
export class InertialPassages implements FlowElement, Source {
  readonly recordCount = 0;
  recordAt = 0;
  /** Where its flows stand in the state. */
  stateAt = 0;
  readonly count: number;
  readonly through: Int32Array;
  readonly areaPerLength: Float64Array;
  readonly scale: Float64Array;
  /** Flow [kg/s], its rate [kg/s^2], and by how much that falls with the flow: 2 (A/L) K |mdot| [1/s]. */
  readonly flow: Float64Array;
  readonly acceleration: Float64Array;
  readonly damping: Float64Array;
  private readonly orifice = new SmoothOrifice();

  constructor(
    passages: readonly InertialPassage[],
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    this.count = passages.length;
    this.through = Int32Array.from(passages, ({ edge }) => edge);
    this.areaPerLength = Float64Array.from(passages, (each) => each.areaPerLength);
    this.scale = Float64Array.from(passages, ({ scale }) => scale);
    this.flow = new Float64Array(this.count);
    this.acceleration = new Float64Array(this.count);
    this.damping = new Float64Array(this.count);
    for (const { edge, forward, backward } of passages) {
      edges.forward[edge] = forward;
      edges.backward[edge] = backward;
    }
    this.orifice.eps = 0;
  }

  /** Takes the flows from a state. */
  load(state: Float64Array): void {
    for (let i = 0; i < this.count; i++) this.flow[i] = state[this.stateAt + i];
  }

  setFlows(): void {
    const { gas, edges, flow, through, areaPerLength, orifice } = this;
    for (let i = 0; i < this.count; i++) {
      const edge = through[i];
      const q = flow[i];
      const from = edges.from[edge];
      const to = edges.to[edge];
      const up = q >= 0 ? from : to;
      const down = q >= 0 ? to : from;
      const p0 = gas.pressure[up];
      const drop = p0 - gas.pressure[down];
      const CdA = q >= 0 ? edges.forward[edge] : edges.backward[edge];
      let loss = (gas.gasConstant[up] * gas.temperature[up]) / (2 * p0 * CdA * CdA);
      if (drop > INCOMPRESSIBLE * p0) {
        orifice.CdA = CdA;
        orifice.p0 = p0;
        orifice.T0 = gas.temperature[up];
        orifice.R = gas.gasConstant[up];
        orifice.gamma = gas.gamma[up];
        orifice.p1 = gas.pressure[down];
        orifice.evaluate();
        loss = drop / (orifice.flow * orifice.flow);
      }
      const slowing = areaPerLength[i] * loss * Math.abs(q);
      this.acceleration[i] = areaPerLength[i] * (gas.pressure[from] - gas.pressure[to]) - slowing * q;
      this.damping[i] = 2 * slowing;
      edges.massFlow[edge] = q;
      edges.carryBulk(edge, up);
    }
  }

  addTo(rates: Float64Array): void {
    for (let i = 0; i < this.count; i++) rates[this.stateAt + i] = this.acceleration[i];
  }

  /** Share of the other side's gas that a change of a flow carries: half where the flow turns, none where it runs [-]. */
  turning(i: number): number {
    const q = this.flow[i];
    const width = TURNING * this.scale[i];
    return 0.5 - (0.5 * Math.abs(q)) / Math.sqrt(q * q + width * width);
  }
}
