import { MOLAR_GAS_CONSTANT } from '../../constants.ts';
import { REFERENCE_TEMPERATURE } from '../../gas/drop-evaporation.ts';
import type { Fuel } from '../../gas/fuel.ts';
import { FUEL_INDEX, LIQUID_INDEX } from '../../gas/mixture.ts';
import { saturationPressure } from '../../gas/saturation.ts';
import type { GasStates } from '../gas-states.ts';
import type { Source } from '../instant.ts';

/**
 * Liquid fuel that evaporates in nodes, limited by saturation:
 *
 *   dm_vapour/dt = -dm_liquid/dt = k(T) m_liquid max(0, 1 - p_vapour / p_sat(T))
 *
 * k: see dropEvaporationRate [1/s]; p_vapour of the fuel's volatile part alone [Pa]. Energy needs no term: it stays in the node, and
 * since enthalpies are absolute the latent heat cools the gas by itself. Vapour does not condense.
 *
 * Fast against the crank at low speed, so it is stepped implicitly, node by node, ahead of the pressures (a product of two
 * linearisations, which leaves the order of a W-method as it is):
 *
 *   (1 + w (g + b)) q = w (g r_liquid - b r_vapour),   r_liquid -= q,   r_vapour += q
 *   g = k (1 - s),   b = k m_liquid s (1 / m_vapour + h_fg d(ln p_sat)/dT / (m c_v)),   s = p_vapour / p_sat
 *
 * Valid: see dropEvaporationRate; p_sat of the fresh composition, so that light ends do not go first; oil in the fuel evaporates
 * with it, as the lump of vapour that the model knows. Records the mass evaporated in each node [kg].
 */
export class Evaporating implements Source {
  readonly recordCount: number;
  recordAt = 0;
  /** w of the stage in hand [s]. */
  weight = 0;
  private readonly forward: Float64Array;
  private readonly back: Float64Array;

  constructor(
    private readonly nodes: readonly number[],
    /** At the reference temperature [1/s]. */
    private readonly rate: number,
    private readonly fuel: Fuel,
    private readonly gas: GasStates,
  ) {
    this.recordCount = nodes.length;
    this.forward = new Float64Array(nodes.length);
    this.back = new Float64Array(nodes.length);
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { nodes, gas } = this;
    const n = gas.set.count;
    for (let i = 0; i < nodes.length; i++) {
      const node = nodes[i];
      const liquid = gas.mass[node] * gas.fraction[node * n + LIQUID_INDEX];
      const open = 1 - this.saturation(node);
      const flow = open > 0 ? this.speed(node) * liquid * open : 0;
      const at = node * gas.stride;
      rates[at + LIQUID_INDEX] -= flow;
      rates[at + FUEL_INDEX] += flow;
      if (record) rates[this.recordAt + i] = flow;
    }
  }

  /** Linearises about the present instant; holds until the next call. */
  freeze(): void {
    const { nodes, gas, fuel } = this;
    const n = gas.set.count;
    for (let i = 0; i < nodes.length; i++) {
      const node = nodes[i];
      const s = this.saturation(node);
      this.forward[i] = 0;
      this.back[i] = 0;
      if (s >= 1) continue;
      const k = this.speed(node);
      const mass = gas.mass[node];
      const liquid = mass * gas.fraction[node * n + LIQUID_INDEX];
      const vapour = mass * gas.fraction[node * n + FUEL_INDEX];
      const T = gas.temperature[node];
      const p = saturationPressure(fuel.saturation, T);
      const slope = (saturationPressure(fuel.saturation, T + 1) - p) / p;
      this.forward[i] = k * (1 - s);
      if (vapour > 0 && liquid > 0)
        this.back[i] = k * liquid * s * (1 / vapour + (fuel.latentHeat * slope) / gas.heatCapacity[node]);
    }
  }

  /** Solves (I - w J) of the linearisation in place. */
  relax(r: Float64Array, record: boolean): void {
    const { nodes, gas, forward, back, weight } = this;
    for (let i = 0; i < nodes.length; i++) {
      const g = weight * forward[i];
      const b = weight * back[i];
      if (g === 0 && b === 0) continue;
      const at = nodes[i] * gas.stride;
      const q = (g * r[at + LIQUID_INDEX] - b * r[at + FUEL_INDEX]) / (1 + g + b);
      r[at + LIQUID_INDEX] -= q;
      r[at + FUEL_INDEX] += q;
      if (record) r[this.recordAt + i] += q;
    }
  }

  private speed(node: number): number {
    const x = this.gas.temperature[node] / REFERENCE_TEMPERATURE;
    return this.rate * x * Math.sqrt(x);
  }

  /** p_vapour / p_sat [-]. */
  private saturation(node: number): number {
    const { gas, fuel } = this;
    const T = gas.temperature[node];
    const vapour = gas.mass[node] * gas.fraction[node * gas.set.count + FUEL_INDEX];
    const p = (vapour * fuel.volatileMoles * MOLAR_GAS_CONSTANT * T) / gas.volume[node];
    return p / saturationPressure(fuel.saturation, T);
  }
}
