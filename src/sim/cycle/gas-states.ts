import type { ConstituentSet } from '../gas/constituent-set.ts';
import type { Dissociation } from '../gas/dissociation.ts';
import { FROZEN_BELOW } from '../gas/dissociation.ts';

/** Accepted gas temperatures [K]; outside them a run ends with a reason. */
export const MIN_TEMPERATURE = 200;
export const MAX_TEMPERATURE = 3500;

/**
 * The gas of every node, unpacked from the conserved state: of each node the mass of every constituent and the
 * internal energy, `stride` numbers in one stretch of the flat state vector.
 *
 *   sum_i m_i u_i(T) = U      (Newton, started from the node's last temperature)
 *   p V = sum_i m_i R_i T
 *
 * Where burned gas dissociates, its u_i, R_i and specific heat above 1500 K hold what Dissociation adds at the density of all gas.
 *
 * Nodes from `dynamicCount` on are reservoirs: they hold what `setReservoir` gave them and own no state.
 *
 * Numerics: Newton stops when a step is below 1.5e-3 of T, so the remaining error is below 3e-7 of it; u_i are corrected
 * by that last step. Everything is overwritten by the next `unpack`.
 *
 * Units: masses [kg], energies absolute [J, J/kg], pressure [Pa], temperature [K], volume [m^3], its rate [m^3/s].
 * Valid: ideal gas; polynomials are data from 300 K (200 K for simple gases), declared extrapolations below.
 */
export class GasStates {
  /** State numbers per node: constituents, then energy. */
  readonly stride: number;
  readonly temperature: Float64Array;
  readonly pressure: Float64Array;
  readonly mass: Float64Array;
  readonly volume: Float64Array;
  readonly volumeRate: Float64Array;
  /** Of the mixture [J/(kg K)]. */
  readonly gasConstant: Float64Array;
  readonly gamma: Float64Array;
  /** Specific enthalpy of the mixture, absolute [J/kg]. */
  readonly enthalpy: Float64Array;
  /** m c_v [J/K]. */
  readonly heatCapacity: Float64Array;
  /** Mass fractions and constituents' internal energies, node-major. */
  readonly fraction: Float64Array;
  readonly energyOf: Float64Array;
  private readonly heatOf: Float64Array;
  /** After a failed `unpack`: the node and what its temperature came to. */
  failedNode = -1;

  constructor(
    readonly set: ConstituentSet,
    readonly dynamicCount: number,
    readonly nodeCount: number,
    /** What dissociation adds to the burned gas; null where it is frozen. */
    private readonly dissociation: Dissociation | null = null,
  ) {
    this.stride = set.count + 1;
    const perNode = () => new Float64Array(nodeCount);
    this.temperature = perNode().fill(300);
    this.pressure = perNode();
    this.mass = perNode();
    this.volume = perNode();
    this.volumeRate = perNode();
    this.gasConstant = perNode();
    this.gamma = perNode();
    this.enthalpy = perNode();
    this.heatCapacity = perNode();
    this.fraction = new Float64Array(nodeCount * set.count);
    this.energyOf = new Float64Array(nodeCount * set.count);
    this.heatOf = new Float64Array(nodeCount * set.count);
  }

  /** Fixes a reservoir's state; `fractions` by mass. */
  setReservoir(node: number, pressure: number, temperature: number, fractions: readonly number[]): void {
    const { set } = this;
    const n = set.count;
    const energies = new Float64Array(n);
    set.evaluate(temperature, energies, this.heatOf, 0);
    this.energyOf.set(energies, node * n);
    let R = 0;
    let u = 0;
    let cv = 0;
    fractions.forEach((share, k) => {
      this.fraction[node * n + k] = share;
      R += share * set.gasConstants[k];
      u += share * this.energyOf[node * n + k];
      cv += share * this.heatOf[k];
    });
    this.pressure[node] = pressure;
    this.temperature[node] = temperature;
    this.gasConstant[node] = R;
    this.gamma[node] = 1 + R / cv;
    this.enthalpy[node] = u + R * temperature;
  }

  /** Writes into `state` the masses and energy of a node at p, T in its present volume. */
  pack(
    state: Float64Array,
    node: number,
    pressure: number,
    temperature: number,
    fractions: readonly number[],
  ): void {
    const { set } = this;
    const u = new Float64Array(set.count);
    set.evaluate(temperature, u, this.heatOf, 0);
    const R = fractions.reduce((sum, share, k) => sum + share * set.gasConstants[k], 0);
    const mass = (pressure * this.volume[node]) / (R * temperature);
    const at = node * this.stride;
    let energy = 0;
    fractions.forEach((share, k) => {
      state[at + k] = share * mass;
      energy += share * mass * u[k];
    });
    state[at + set.count] = energy;
    this.temperature[node] = temperature;
  }

  /** Whether every dynamic node is within the accepted range; `failedNode` is the first that is not. */
  inRange(): boolean {
    for (let node = 0; node < this.dynamicCount; node++) {
      const T = this.temperature[node];
      if (!(T >= MIN_TEMPERATURE && T <= MAX_TEMPERATURE)) {
        this.failedNode = node;
        return false;
      }
    }
    return true;
  }

  /** Unpacks all dynamic nodes. False, with `failedNode`, where a mass is not positive or T leaves 150-3600 K. */
  unpack(state: Float64Array): boolean {
    const { set, stride, temperature, fraction, energyOf, heatOf } = this;
    const n = set.count;
    const R = set.gasConstants;
    for (let node = 0; node < this.dynamicCount; node++) {
      const at = node * stride;
      const base = node * n;
      let mass = 0;
      let massR = 0;
      for (let k = 0; k < n; k++) {
        mass += state[at + k];
        massR += state[at + k] * R[k];
      }
      const energy = state[at + n];
      const frozenR = massR;
      let T = temperature[node];
      let capacity = 0;
      let converged = false;
      for (let iteration = 0; iteration < 20 && !converged; iteration++) {
        set.evaluate(T, energyOf, heatOf, base);
        if (T > FROZEN_BELOW && this.dissociation) massR = frozenR + this.dissociate(node, state, T, mass);
        let u = 0;
        capacity = 0;
        for (let k = 0; k < n; k++) {
          u += state[at + k] * energyOf[base + k];
          capacity += state[at + k] * heatOf[base + k];
        }
        const step = (energy - u) / capacity;
        T += step;
        if (!(T > 150 && T < 3600)) {
          if (iteration < 8 && T === T) T = T < 1000 ? 160 : 3500;
          else break;
        } else if (Math.abs(step) < 1.5e-3 * T) {
          for (let k = 0; k < n; k++) energyOf[base + k] += step * heatOf[base + k];
          converged = true;
        }
      }
      if (!converged || !(mass > 0)) {
        this.failedNode = node;
        temperature[node] = 300;
        return false;
      }
      temperature[node] = T;
      const mixtureR = massR / mass;
      const V = this.volume[node];
      const p = (massR * T) / V;
      this.mass[node] = mass;
      this.pressure[node] = p;
      this.gasConstant[node] = mixtureR;
      this.heatCapacity[node] = capacity;
      this.gamma[node] = 1 + massR / capacity;
      this.enthalpy[node] = (energy + p * V) / mass;
      const inverse = 1 / mass;
      for (let k = 0; k < n; k++) fraction[base + k] = state[at + k] * inverse;
    }
    return true;
  }

  /**
   * Adds what dissociation does to the burned gas of a node, at a temperature and the node's density, to its energy and specific heat.
   *
   * @returns what it adds to the sum of masses times gas constants [J/K]
   */
  private dissociate(node: number, state: Float64Array, T: number, mass: number): number {
    const dissociation = this.dissociation!;
    const { index } = dissociation;
    dissociation.evaluate(T, Math.log(mass / this.volume[node]));
    const at = node * this.set.count + index;
    this.energyOf[at] += dissociation.energy;
    this.heatOf[at] += dissociation.heat;
    return state[node * this.stride + index] * dissociation.gasConstant;
  }
}
