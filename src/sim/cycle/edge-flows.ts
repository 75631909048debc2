import type { GasStates } from './gas-states.ts';

/**
 * The flow through every edge at one instant: how much, what it carries, and how it answers to pressure.
 *
 * `massFlow` is positive from `from` to `to` [kg/s]; `slopeFrom` and `slopeTo` are its derivatives to the two pressures
 * [kg/(s Pa)], `openingRate` that to time at fixed gas, because the opening itself grows [kg/s^2]; `carried` holds per kilogram of flow the mass of every constituent and the enthalpy [-, J/kg].
 * One flux leaves one node and enters the other, so mass, species and energy are conserved by construction.
 */
export class EdgeFlows {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly massFlow: Float64Array;
  readonly slopeFrom: Float64Array;
  readonly slopeTo: Float64Array;
  readonly openingRate: Float64Array;
  readonly carried: Float64Array;
  /** Of an orifice: discharge coefficient times area with and against the edge [m^2], smoothing pressure [Pa]. */
  readonly forward: Float64Array;
  readonly backward: Float64Array;
  readonly smoothing: Float64Array;
  /** Pressure difference within which a flow counts as about to turn; 0 where none does [Pa]. */
  readonly turning: Float64Array;
  readonly stride: number;

  constructor(
    edges: readonly { readonly from: number; readonly to: number }[],
    private readonly gas: GasStates,
  ) {
    this.count = edges.length;
    this.stride = gas.stride;
    this.from = Int32Array.from(edges, (edge) => edge.from);
    this.to = Int32Array.from(edges, (edge) => edge.to);
    this.massFlow = new Float64Array(this.count);
    this.slopeFrom = new Float64Array(this.count);
    this.slopeTo = new Float64Array(this.count);
    this.openingRate = new Float64Array(this.count);
    this.forward = new Float64Array(this.count);
    this.backward = new Float64Array(this.count);
    this.smoothing = new Float64Array(this.count).fill(1);
    this.turning = new Float64Array(this.count);
    this.carried = new Float64Array(this.count * this.stride);
  }

  close(edge: number): void {
    this.massFlow[edge] = 0;
    this.slopeFrom[edge] = 0;
    this.slopeTo[edge] = 0;
    this.openingRate[edge] = 0;
  }

  /** The flow carries the bulk gas of `node`. */
  carryBulk(edge: number, node: number): void {
    const { gas, carried, stride } = this;
    const n = stride - 1;
    const at = edge * stride;
    const base = node * n;
    for (let k = 0; k < n; k++) carried[at + k] = gas.fraction[base + k];
    carried[at + n] = gas.enthalpy[node];
  }

  /**
   * Adds every flux to the rates of its two nodes; with `record` also writes it, edge by edge, from `recordAt` on.
   *
   * @param rates - rates of the state; node stretches must hold what is to be added to
   */
  apply(rates: Float64Array, record: boolean, recordAt: number): void {
    const { count, from, to, massFlow, carried, stride } = this;
    const reservoirs = this.gas.dynamicCount;
    for (let e = 0; e < count; e++) {
      const flow = massFlow[e];
      const at = e * stride;
      if (flow !== 0) {
        const source = from[e];
        const sink = to[e];
        if (source < reservoirs) {
          const i = source * stride;
          for (let k = 0; k < stride; k++) rates[i + k] -= flow * carried[at + k];
        }
        if (sink < reservoirs) {
          const i = sink * stride;
          for (let k = 0; k < stride; k++) rates[i + k] += flow * carried[at + k];
        }
      }
      if (record) for (let k = 0; k < stride; k++) rates[recordAt + at + k] = flow * carried[at + k];
    }
  }
}
