import type { SeriesArea } from '../../exchange/orifices-in-series.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement } from '../instant.ts';
import type { Opening } from './orifices.ts';
import { OrificeFlow } from './orifices.ts';

/** What the carburettor makes of the air; fuel may join it elsewhere. */
export interface CarburettorMixture {
  /** Mass fractions of what leaves it forward. */
  readonly fractions: readonly number[];
  /** Fuel per kilogram of air [-]. */
  readonly fuelPerAir: number;
  /** Absolute enthalpy of the mixture per kilogram, after the evaporation that cools it [J/kg]. */
  readonly enthalpy: number;
}

/**
 * Throttle with a carburettor of constant mixture: air enters through the throttle, fuel joins in proportion while the
 * flow runs inwards. Gas blown back carries what the inlet box holds.
 *
 *   mdot = mdot_air (1 + F)   inwards, F: fuel per air [-];   mdot = that of the orifice   outwards
 *
 * Valid: mixture independent of flow, which real carburettors hold only by their air correction; no film of fuel on walls.
 * What stands in line with the throttle is one opening whose area answers to the pressure ratio (orifices-in-series.ts); blown
 * back, it is taken to be the same.
 * Numerics: the flow has a small kink at zero, where its slope changes by 1 + F. Slopes leave out how the area in line answers to
 * pressure: it falls towards choking less than half as fast as the chord rises, so they are never too flat.
 */
export class Carburettor implements FlowElement {
  private readonly flow: OrificeFlow;

  constructor(
    private readonly opening: Opening,
    /** Where restrictor, venturi or arrester stand in line with the throttle; null for the throttle alone. */
    private readonly series: SeriesArea | null,
    private readonly mixture: CarburettorMixture,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    this.flow = new OrificeFlow(gas, edges);
    this.flow.open(opening);
  }

  setFlows(): void {
    const { edges, opening, mixture, series } = this;
    const { edge } = opening;
    if (opening.forward === 0 && opening.backward === 0) {
      edges.close(edge);
      return;
    }
    if (series) {
      const before = this.gas.pressure[edges.from[edge]];
      const behind = this.gas.pressure[edges.to[edge]];
      const area = series.at(before > behind ? behind / before : before / behind);
      edges.forward[edge] = area;
      edges.backward[edge] = area;
    }
    if (!this.flow.set(edge)) return;
    const share = 1 + mixture.fuelPerAir;
    edges.massFlow[edge] *= share;
    edges.slopeFrom[edge] *= share;
    edges.slopeTo[edge] *= share;
    const at = edge * edges.stride;
    const n = edges.stride - 1;
    for (let k = 0; k < n; k++) edges.carried[at + k] = mixture.fractions[k];
    edges.carried[at + n] = mixture.enthalpy;
  }
}
