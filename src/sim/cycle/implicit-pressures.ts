import { SparseLu } from '../numerics/sparse-lu.ts';
import type { EdgeFlows } from './edge-flows.ts';
import type { GasStates } from './gas-states.ts';

/**
 * The stiff part of the network, linearised: flows that answer to pressures, pressures that answer to flows.
 *
 *   J = S M P     P: state -> node pressures,  M: pressures -> edge flows,  S: edge flows -> rates of the state
 *
 * so (I - w J) x = r, w = gamma h, is solved in the node pressures alone:
 *
 *   (I - w P S M) dp = P r,      x = r + w S M dp
 *
 * Each edge's correction leaves one node and enters the other, so what the rates conserve the solution conserves.
 * Composition, temperature and window areas are left out: none of them is stiff, and the method keeps its order.
 *
 * Volumes that move change pressures at fixed state, and that is as stiff: f_t = S M p_t with p_t = -p Vdot / V.
 *
 *   dp/dm_k = (R_k T - kappa u_k) / V,   dp/dU = kappa / V,   kappa = gamma - 1
 *
 * Units: p [Pa], flows [kg/s], state [kg, J], w [s], V [m^3], u_k absolute [J/kg].
 * Valid: flows whose slopes are those of dissipative openings: falling in the pressure they run towards.
 * Numerics: the diagonal of I - w P S M grows with w for such flows, so LU does without pivoting.
 * Source: Hairer & Wanner, Solving Ordinary Differential Equations II, 1996, sec. IV.7 (W-methods); the splitting follows from
 * the ideal gas law at fixed composition.
 */
export class ImplicitPressures {
  private readonly lu: SparseLu;
  /** dp of node / d state, node-major, and answers frozen by `freeze`. */
  private readonly gradient: Float64Array;
  private readonly slopeFrom: Float64Array;
  private readonly slopeTo: Float64Array;
  private readonly carried: Float64Array;
  /** Rate at which each flow changes because volumes move [kg/s^2]. */
  private readonly drift: Float64Array;
  private readonly active: Int32Array;
  private activeCount = 0;
  private readonly pressures: Float64Array;
  /** Where each edge's four matrix entries stand: (from, from), (from, to), (to, from), (to, to). */
  private readonly entries: Int32Array;
  private weight = 0;

  constructor(
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    const n = gas.dynamicCount;
    const inside = (node: number) => node < n;
    const pairs: [number, number][] = [];
    for (let e = 0; e < edges.count; e++) {
      if (inside(edges.from[e]) && inside(edges.to[e])) pairs.push([edges.from[e], edges.to[e]]);
    }
    this.lu = new SparseLu(n, pairs);
    this.entries = new Int32Array(4 * edges.count).fill(-1);
    for (let e = 0; e < edges.count; e++) {
      const ends = [edges.from[e], edges.to[e]];
      ends.forEach((row, i) =>
        ends.forEach((column, j) => {
          if (inside(row) && inside(column)) this.entries[4 * e + 2 * i + j] = this.lu.index(row, column);
        }),
      );
    }
    this.gradient = new Float64Array(n * gas.stride);
    this.slopeFrom = new Float64Array(edges.count);
    this.slopeTo = new Float64Array(edges.count);
    this.carried = new Float64Array(edges.carried.length);
    this.drift = new Float64Array(edges.count);
    this.active = new Int32Array(edges.count);
    this.pressures = new Float64Array(n);
  }

  /** Copies slopes and gradients from the present instant; they hold until the next call. */
  freeze(): void {
    const { gas, edges, gradient } = this;
    const n = gas.set.count;
    const R = gas.set.gasConstants;
    for (let node = 0; node < gas.dynamicCount; node++) {
      const inverseV = 1 / gas.volume[node];
      const kappa = gas.gamma[node] - 1;
      const T = gas.temperature[node];
      const at = node * gas.stride;
      for (let k = 0; k < n; k++)
        gradient[at + k] = (R[k] * T - kappa * gas.energyOf[node * n + k]) * inverseV;
      gradient[at + n] = kappa * inverseV;
    }
    this.activeCount = 0;
    for (let e = 0; e < edges.count; e++) {
      if (edges.slopeFrom[e] === 0 && edges.slopeTo[e] === 0) continue;
      this.active[this.activeCount++] = e;
      this.drift[e] =
        edges.slopeFrom[e] * pressureDrift(gas, edges.from[e]) +
        edges.slopeTo[e] * pressureDrift(gas, edges.to[e]);
    }
    this.slopeFrom.set(edges.slopeFrom);
    this.slopeTo.set(edges.slopeTo);
    this.carried.set(edges.carried);
  }

  /** Builds and factors I - w P S M. @param weight - w = gamma h [s] */
  factor(weight: number): void {
    const { lu, edges, gas, entries, gradient, carried, slopeFrom, slopeTo } = this;
    const stride = gas.stride;
    this.weight = weight;
    lu.setIdentity();
    const values = lu.values;
    for (let i = 0; i < this.activeCount; i++) {
      const e = this.active[i];
      const at = e * stride;
      for (let end = 0; end < 2; end++) {
        const node = end === 0 ? edges.from[e] : edges.to[e];
        if (node >= gas.dynamicCount) continue;
        let answer = 0; // d pressure of node / d edge flow
        const base = node * stride;
        for (let k = 0; k < stride; k++) answer += gradient[base + k] * carried[at + k];
        const w = end === 0 ? weight * answer : -weight * answer;
        const first = entries[4 * e + 2 * end];
        const second = entries[4 * e + 2 * end + 1];
        if (first >= 0) values[first] += w * slopeFrom[e];
        if (second >= 0) values[second] += w * slopeTo[e];
      }
    }
    lu.factor();
  }

  /** Adds scale * f_t to r: what moving volumes do to the flows. */
  addDrift(r: Float64Array, scale: number, record: boolean, recordAt: number): void {
    for (let i = 0; i < this.activeCount; i++) {
      const e = this.active[i];
      if (this.drift[e] !== 0) this.addFlow(r, e, scale * this.drift[e], record, recordAt);
    }
  }

  /** Overwrites r with (I - w J)^-1 r; records live from `recordAt` on when `record` is set. */
  solve(r: Float64Array, record: boolean, recordAt: number): void {
    const { gas, edges, gradient, pressures, weight } = this;
    const stride = gas.stride;
    const n = gas.dynamicCount;
    for (let node = 0; node < n; node++) {
      const base = node * stride;
      let sum = 0;
      for (let k = 0; k < stride; k++) sum += gradient[base + k] * r[base + k];
      pressures[node] = sum;
    }
    this.lu.solve(pressures);
    for (let i = 0; i < this.activeCount; i++) {
      const e = this.active[i];
      const source = edges.from[e];
      const sink = edges.to[e];
      const atSource = source < n ? pressures[source] : 0;
      const atSink = sink < n ? pressures[sink] : 0;
      const flow = weight * (this.slopeFrom[e] * atSource + this.slopeTo[e] * atSink);
      this.addFlow(r, e, flow, record, recordAt);
    }
  }

  /** What `flow` through edge e, carrying what was frozen, does to the two nodes and the record. */
  private addFlow(r: Float64Array, e: number, flow: number, record: boolean, recordAt: number): void {
    const { edges, carried } = this;
    const n = this.gas.dynamicCount;
    const stride = this.gas.stride;
    const source = edges.from[e];
    const sink = edges.to[e];
    const at = e * stride;
    if (source < n) for (let k = 0, j = source * stride; k < stride; k++) r[j + k] -= flow * carried[at + k];
    if (sink < n) for (let k = 0, j = sink * stride; k < stride; k++) r[j + k] += flow * carried[at + k];
    if (record) for (let k = 0, j = recordAt + at; k < stride; k++) r[j + k] += flow * carried[at + k];
  }
}

/** dp/dt of a node at fixed masses and energy [Pa/s]; volumes at rest and reservoirs have none. */
function pressureDrift(gas: GasStates, node: number): number {
  const rate = gas.volumeRate[node];
  return rate === 0 ? 0 : (-gas.pressure[node] * rate) / gas.volume[node];
}
