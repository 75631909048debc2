import { SparseLu } from '../numerics/sparse-lu.ts';
import type { EdgeFlows } from './edge-flows.ts';
import type { InertialPassages } from './flows/inertial-passages.ts';
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
 * Pistons change pressures and window areas at fixed state, and that is as stiff: f_t = S (M p_t + q_t) with p_t = -p Vdot / V
 * and q_t = q Adot / A.
 *
 *   dp/dm_k = (R_k T - kappa u_k) / V,   dp/dU = kappa / V,   kappa = gamma - 1
 *
 * The flow q of a passage with inertia is a state itself, q_t = a (p_from - p_to) - d q, and is eliminated the same way:
 *
 *   q' = (r_q + w a (dp_from - dp_to)) / (1 + w d)      so it is an edge of slopes +-w a / (1 + w d) that also carries w r_q / (1 + w d)
 *
 * Units: p [Pa], flows [kg/s], state [kg, J], w [s], V [m^3], u_k absolute [J/kg].
 * Valid: flows whose slopes are those of dissipative openings: falling in the pressure they run towards.
 * Numerics: the diagonal of I - w P S M grows with w for such flows, so LU does without pivoting.
 * Source: Hairer & Wanner, Solving Ordinary Differential Equations II, 1996, sec. IV.7 (W-methods); the splitting follows from
 * the ideal gas law at fixed composition.
 */
export class ImplicitPressures {
  /** w = gamma h [s], and the weight of f_t, what moving pistons do to the flows [s^2]. */
  weight = 0;
  drift = 0;
  /** What the last solution adds to every edge's flow over the step [kg]; 0 where it has no slopes. */
  readonly corrections: Float64Array;
  private readonly lu: SparseLu;
  /** dp of node / d state, node-major, and what else `freeze` holds. */
  private readonly gradient: Float64Array;
  private readonly slopeFrom: Float64Array;
  private readonly slopeTo: Float64Array;
  private readonly carried: Float64Array;
  /** How the pressure of each edge's two nodes answers to its flow, 0 for a reservoir [Pa/kg]. */
  private readonly answerFrom: Float64Array;
  private readonly answerTo: Float64Array;
  /** Rate at which each flow changes because pistons move [kg/s^2], and what that does to pressures [Pa/s^2]. */
  private readonly drifts: Float64Array;
  private readonly pressureOfDrift: Float64Array;
  private readonly active: Int32Array;
  private activeCount = 0;
  private readonly pressures: Float64Array;
  private share = 0;
  /** Of passages with inertia: d; 1 + w d; the slope w a / (1 + w d); r_q / (1 + w d) of the solution in hand. */
  private readonly damping: Float64Array;
  private readonly slowed: Float64Array;
  private readonly inertialSlope: Float64Array;
  private readonly inertialFlow: Float64Array;
  /** Where each edge's four matrix entries stand: (from, from), (from, to), (to, from), (to, to). */
  private readonly entries: Int32Array;

  constructor(
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
    private readonly inertia: InertialPassages | null = null,
  ) {
    const n = gas.dynamicCount;
    this.damping = new Float64Array(inertia?.count ?? 0);
    this.slowed = new Float64Array(inertia?.count ?? 0);
    this.inertialSlope = new Float64Array(inertia?.count ?? 0);
    this.inertialFlow = new Float64Array(inertia?.count ?? 0);
    const inside = (node: number) => node < n;
    const pairs: [number, number][] = [];
    for (let e = 0; e < edges.count; e++) {
      if (inside(edges.from[e]) && inside(edges.to[e])) pairs.push([edges.from[e], edges.to[e]]);
    }
    this.corrections = new Float64Array(edges.count);
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
    this.answerFrom = new Float64Array(edges.count);
    this.answerTo = new Float64Array(edges.count);
    this.drifts = new Float64Array(edges.count);
    this.pressureOfDrift = new Float64Array(n);
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
    this.pressureOfDrift.fill(0);
    this.activeCount = 0;
    this.corrections.fill(0);
    for (let e = 0; e < edges.count; e++) {
      if (edges.slopeFrom[e] === 0 && edges.slopeTo[e] === 0) continue;
      this.active[this.activeCount++] = e;
      this.slopeFrom[e] = edges.slopeFrom[e];
      this.slopeTo[e] = edges.slopeTo[e];
      const at = e * gas.stride;
      this.share = this.shareOfOther(e);
      this.mix(e, at);
      const source = edges.from[e];
      const sink = edges.to[e];
      this.answerFrom[e] = -this.answer(source, at);
      this.answerTo[e] = this.answer(sink, at);
      this.drifts[e] =
        edges.slopeFrom[e] * pressureDrift(gas, source) +
        edges.slopeTo[e] * pressureDrift(gas, sink) +
        edges.openingRate[e];
      if (source < gas.dynamicCount) this.pressureOfDrift[source] += this.answerFrom[e] * this.drifts[e];
      if (sink < gas.dynamicCount) this.pressureOfDrift[sink] += this.answerTo[e] * this.drifts[e];
    }
    if (this.inertia !== null) this.freezeInertia(this.inertia);
  }

  private freezeInertia(inertia: InertialPassages): void {
    const { gas, edges } = this;
    for (let i = 0; i < inertia.count; i++) {
      const e = inertia.through[i];
      const at = e * gas.stride;
      this.share = inertia.turning(i);
      this.mix(e, at);
      this.answerFrom[e] = -this.answer(edges.from[e], at);
      this.answerTo[e] = this.answer(edges.to[e], at);
      this.drifts[e] =
        inertia.areaPerLength[i] * (pressureDrift(gas, edges.from[e]) - pressureDrift(gas, edges.to[e]));
      this.damping[i] = inertia.damping[i];
    }
  }

  /**
   * Share of the other side's gas in what a change of the flow through an edge carries: half where the flow is about to turn, or what
   * a step does would jump as it turns.
   */
  private shareOfOther(e: number): number {
    const { gas, edges } = this;
    const dp = gas.pressure[edges.from[e]] - gas.pressure[edges.to[e]];
    const scale = edges.turning[e];
    return scale > 0 ? 0.5 - (0.5 * Math.abs(dp)) / Math.sqrt(dp * dp + scale * scale) : 0;
  }

  /** Freezes what a change of the flow through an edge carries, with `share` of it from the other side. */
  private mix(e: number, at: number): void {
    const { gas, edges, carried, share } = this;
    const { from, to, massFlow, stride } = edges;
    const n = stride - 1;
    const other = massFlow[e] >= 0 ? to[e] : from[e];
    for (let k = 0; k < n; k++)
      carried[at + k] = edges.carried[at + k] + share * (gas.fraction[other * n + k] - edges.carried[at + k]);
    carried[at + n] = edges.carried[at + n] + share * (gas.enthalpy[other] - edges.carried[at + n]);
  }

  /** What a flow into a node, carrying what stands at `at`, does to its pressure [Pa/kg]. */
  private answer(node: number, at: number): number {
    const { gas, gradient, carried } = this;
    if (node >= gas.dynamicCount) return 0;
    const base = node * gas.stride;
    let sum = 0;
    for (let k = 0; k < gas.stride; k++) sum += gradient[base + k] * carried[at + k];
    return sum;
  }

  /** Builds and factors I - w P S M. */
  factor(): void {
    const { lu, entries, slopeFrom, slopeTo, answerFrom, answerTo, weight } = this;
    lu.setIdentity();
    const values = lu.values;
    for (let i = 0; i < this.activeCount; i++) {
      const e = this.active[i];
      const at = 4 * e;
      const from = weight * answerFrom[e];
      const to = weight * answerTo[e];
      if (entries[at] >= 0) values[entries[at]] -= from * slopeFrom[e];
      if (entries[at + 1] >= 0) {
        values[entries[at + 1]] -= from * slopeTo[e];
        values[entries[at + 2]] -= to * slopeFrom[e];
      }
      if (entries[at + 3] >= 0) values[entries[at + 3]] -= to * slopeTo[e];
    }
    if (this.inertia !== null) this.addInertia(this.inertia);
    lu.factor();
  }

  private addInertia({ count, through, areaPerLength }: InertialPassages): void {
    const { lu, entries, answerFrom, answerTo, weight } = this;
    const values = lu.values;
    for (let i = 0; i < count; i++) {
      const e = through[i];
      const at = 4 * e;
      this.slowed[i] = 1 + weight * this.damping[i];
      const slope = (weight * areaPerLength[i]) / this.slowed[i];
      this.inertialSlope[i] = slope;
      const from = weight * answerFrom[e] * slope;
      const to = weight * answerTo[e] * slope;
      if (entries[at] >= 0) values[entries[at]] -= from;
      if (entries[at + 1] >= 0) {
        values[entries[at + 1]] += from;
        values[entries[at + 2]] -= to;
      }
      if (entries[at + 3] >= 0) values[entries[at + 3]] += to;
    }
  }

  /** Overwrites r with (I - w J)^-1 (r + drift f_t); records live from `recordAt` on when `record` is set. */
  solve(r: Float64Array, record: boolean, recordAt: number): void {
    const { gas, edges, gradient, pressures, pressureOfDrift, weight, drift, carried } = this;
    const stride = gas.stride;
    const n = gas.dynamicCount;
    for (let node = 0; node < n; node++) {
      const base = node * stride;
      let sum = drift * pressureOfDrift[node];
      for (let k = 0; k < stride; k++) sum += gradient[base + k] * r[base + k];
      pressures[node] = sum;
    }
    if (this.inertia !== null) this.drive(this.inertia, r);
    this.lu.solve(pressures);
    for (let i = 0; i < this.activeCount; i++) {
      const e = this.active[i];
      const source = edges.from[e];
      const sink = edges.to[e];
      const atSource = source < n ? pressures[source] : 0;
      const atSink = sink < n ? pressures[sink] : 0;
      const flow =
        drift * this.drifts[e] + weight * (this.slopeFrom[e] * atSource + this.slopeTo[e] * atSink);
      this.corrections[e] = flow;
      // What the flow, carrying what was frozen, does to the two nodes and the record.
      const at = e * stride;
      if (source < n)
        for (let k = 0, j = source * stride; k < stride; k++) r[j + k] -= flow * carried[at + k];
      if (sink < n) for (let k = 0, j = sink * stride; k < stride; k++) r[j + k] += flow * carried[at + k];
      if (record) for (let k = 0, j = recordAt + at; k < stride; k++) r[j + k] += flow * carried[at + k];
    }
    if (this.inertia !== null) this.follow(this.inertia, r, record, recordAt);
  }

  /** Puts into the pressures' right-hand side what inertial flows bring by themselves. */
  private drive({ count, through, stateAt }: InertialPassages, r: Float64Array): void {
    const { gas, edges, pressures, weight, drift } = this;
    for (let i = 0; i < count; i++) {
      const e = through[i];
      const flow = (r[stateAt + i] + drift * this.drifts[e]) / this.slowed[i];
      this.inertialFlow[i] = flow;
      const source = edges.from[e];
      const sink = edges.to[e];
      if (source < gas.dynamicCount) pressures[source] += weight * this.answerFrom[e] * flow;
      if (sink < gas.dynamicCount) pressures[sink] += weight * this.answerTo[e] * flow;
    }
  }

  /** From the pressures solved for, the inertial flows, and what they do to nodes and records. */
  private follow(inertia: InertialPassages, r: Float64Array, record: boolean, recordAt: number): void {
    const { gas, edges, pressures, carried, weight } = this;
    const stride = gas.stride;
    const n = gas.dynamicCount;
    for (let i = 0; i < inertia.count; i++) {
      const e = inertia.through[i];
      const source = edges.from[e];
      const sink = edges.to[e];
      const atSource = source < n ? pressures[source] : 0;
      const atSink = sink < n ? pressures[sink] : 0;
      const change = this.inertialFlow[i] + this.inertialSlope[i] * (atSource - atSink);
      r[inertia.stateAt + i] = change;
      const flow = weight * change;
      const at = e * stride;
      if (source < n)
        for (let k = 0, j = source * stride; k < stride; k++) r[j + k] -= flow * carried[at + k];
      if (sink < n) for (let k = 0, j = sink * stride; k < stride; k++) r[j + k] += flow * carried[at + k];
      if (record) for (let k = 0, j = recordAt + at; k < stride; k++) r[j + k] += flow * carried[at + k];
    }
  }
}

/** dp/dt of a node at fixed masses and energy [Pa/s]; volumes at rest and reservoirs have none. */
function pressureDrift(gas: GasStates, node: number): number {
  const rate = gas.volumeRate[node];
  return rate === 0 ? 0 : (-gas.pressure[node] * rate) / gas.volume[node];
}
