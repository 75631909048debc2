import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement, Source } from '../instant.ts';
import { OrificeFlow } from './orifices.ts';

/**
 * Gas that passes the rings of every piston, as an opening of constant size. On its way down it takes the temperature of the liner,
 * since what flows through a gap of some hundredths of a millimetre touches metal all along:
 *
 *   Qdot = mdot ( h(T_cylinder) - h(T_liner) )      into the liner, mdot > 0 from the cylinder [kg/s], h absolute [J/kg]
 *
 * Gas on its way up keeps the crankcase's temperature: it is little, and comes while the cylinder is cold.
 *
 * Valid: ring gaps without lands and grooves in between, so blow-by follows cylinder pressure at once and its size is a coefficient.
 * Source: Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 8.6: gas in crevices is at the temperature of their walls.
 * Records the heat into all liners [W].
 */
export class BlowBy implements FlowElement, Source {
  readonly recordCount = 1;
  recordAt = 0;
  private readonly flow: OrificeFlow;
  private readonly through: Int32Array;
  /** Absolute enthalpy of each constituent at the liner's temperature [J/kg]. */
  private readonly atLiner: Float64Array;

  /**
   * @param CdA       - past the rings of one piston [m^2], > 0
   * @param smoothing - see SmoothOrifice [Pa]
   * @param liner     - temperature [K]
   */
  constructor(
    through: readonly number[],
    CdA: number,
    smoothing: number,
    liner: number,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    this.flow = new OrificeFlow(gas, edges);
    this.through = Int32Array.from(through);
    for (const edge of through) this.flow.open({ edge, forward: CdA, backward: CdA, smoothing });
    const { set } = gas;
    this.atLiner = new Float64Array(set.count);
    set.evaluate(liner, this.atLiner, new Float64Array(set.count), 0);
    for (let k = 0; k < set.count; k++) this.atLiner[k] += set.gasConstants[k] * liner;
  }

  setFlows(): void {
    for (let i = 0; i < this.through.length; i++) this.flow.set(this.through[i]);
  }

  addTo(rates: Float64Array, record: boolean): void {
    const { through, gas, edges, atLiner } = this;
    const n = gas.set.count;
    let total = 0;
    for (let i = 0; i < through.length; i++) {
      const edge = through[i];
      const flow = edges.massFlow[edge];
      if (flow <= 0) continue;
      const at = edge * edges.stride;
      let excess = edges.carried[at + n];
      for (let k = 0; k < n; k++) excess -= edges.carried[at + k] * atLiner[k];
      const heat = flow * excess;
      const sink = edges.to[edge];
      if (sink < gas.dynamicCount) rates[sink * gas.stride + n] -= heat;
      total += heat;
    }
    if (record) rates[this.recordAt] = total;
  }
}
