import type { OutflowPurity } from '../../scavenging/outflow-purity.ts';
import type { DirectionalCoefficient } from '../../engine.ts';
import type { DischargeCoefficients } from '../../exchange/discharge-table.ts';
import { DischargeTable } from '../../exchange/discharge-table.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement } from '../instant.ts';
import type { Memory } from '../memory.ts';
import type { Pistons } from '../pistons.ts';
import type { Zones } from '../zones.ts';
import { OrificeFlow } from './orifices.ts';

export interface WindowEdges {
  readonly transfers: readonly number[];
  readonly exhausts: readonly number[];
}

export interface WindowFlowSettings {
  readonly transferDischarge: DirectionalCoefficient;
  readonly exhaustDischarge: DirectionalCoefficient;
  /** Where given, instead of the constant coefficients. */
  readonly transferTable: DischargeCoefficients | null;
  readonly exhaustTable: DischargeCoefficients | null;
  /** Of each cylinder's windows, where its coefficient goes by the opening [m^2]. */
  readonly fullTransfer: readonly number[];
  readonly fullExhaust: readonly number[];
  readonly transferSmoothing: number;
  readonly exhaustSmoothing: number;
  /** Of each cylinder, share of the transfer inflow that passes straight to the exhaust [-]. */
  readonly shortCircuitShare: readonly number[];
  /** Whether each constituent counts as fresh charge. */
  readonly fresh: readonly boolean[];
}

interface DirectionTables {
  readonly forward: DischargeTable;
  readonly backward: DischargeTable;
  /** One over the full area of each cylinder's windows [1/m^2]. */
  readonly perFull: Float64Array;
}

function tablesOf(table: DischargeCoefficients | null, full: readonly number[]): DirectionTables | null {
  return (
    table && {
      forward: new DischargeTable(table, table.forward),
      backward: new DischargeTable(table, table.backward),
      perFull: Float64Array.from(full, (area) => 1 / area),
    }
  );
}

/**
 * Transfer and exhaust windows of all cylinders, and what the exhaust carries away.
 *
 * Of the outflow, min(sigma mdot_transfer, mdot_exhaust) is passage gas that crossed straight over. The rest leaves the
 * cylinder with the purity of the scavenging law, counted from the gas that stood there when the exhaust opened:
 *
 *   xi = (chi - chi_0) / (1 - chi_0),   leaving purity = chi_0 + (1 - chi_0) beta(xi),   chi where chi <= chi_0
 *
 * chi_0 is the unburned share of the old gas, which is mixed through it and so leaves with it. Fresh and burned
 * constituents each keep their own proportions. chi, xi, beta, sigma [-]; flows [kg/s].
 *
 * Discharge coefficients are constant, or by opening and pressure ratio from a table. Slopes and f_t hold the coefficient as it is:
 * it changes slowly beside area and pressures.
 *
 * What leaves has the cylinder's mean temperature, or with zones that of the zones it comes from, and then the flow has their density too:
 *
 *   h = beta h_f(T_f) + (1 - beta) h_b(T_b),   mdot with rho of the same mix
 *
 * Valid: without zones fresh charge that leaves takes too much heat along. The density is that of what leaves the cylinder, short circuit apart.
 * Numerics: chi_0 is fixed at the opening of the exhaust, so it takes no part in a step; the two minima make kinks.
 * Source: the law of outflow-purity.ts; the correction for unburned old gas follows from mass conservation.
 */
export class Windows implements FlowElement {
  private readonly flow: OrificeFlow;
  private readonly isFresh: Uint8Array;
  private readonly transferTables: DirectionTables | null;
  private readonly exhaustTables: DirectionTables | null;

  constructor(
    private readonly through: WindowEdges,
    private readonly settings: WindowFlowSettings,
    private readonly law: OutflowPurity,
    private readonly pistons: Pistons,
    private readonly memory: Memory,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
    private readonly zones: Zones | null = null,
  ) {
    this.flow = new OrificeFlow(gas, edges);
    const { transferSmoothing, exhaustSmoothing } = settings;
    for (const edge of through.transfers)
      this.flow.open({ edge, forward: 0, backward: 0, smoothing: transferSmoothing });
    for (const edge of through.exhausts)
      this.flow.open({ edge, forward: 0, backward: 0, smoothing: exhaustSmoothing });
    this.transferTables = tablesOf(settings.transferTable, settings.fullTransfer);
    this.exhaustTables = tablesOf(settings.exhaustTable, settings.fullExhaust);
    this.isFresh = Uint8Array.from(settings.fresh, (fresh) => (fresh ? 1 : 0));
  }

  setFlows(): void {
    const { through, settings, pistons, edges, flow, transferTables, exhaustTables } = this;
    const { transferDischarge, exhaustDischarge } = settings;
    const count = through.transfers.length;
    for (let j = 0; j < count; j++) {
      const transfer = through.transfers[j];
      const exhaust = through.exhausts[j];
      const transferArea = pistons.transferArea[j];
      const exhaustArea = pistons.exhaustArea[j];
      if (transferArea > 0) {
        if (transferTables !== null) this.openByTable(transferTables, transfer, j, transferArea);
        else {
          edges.forward[transfer] = transferDischarge.forward * transferArea;
          edges.backward[transfer] = transferDischarge.backward * transferArea;
        }
        flow.set(transfer);
        edges.openingRate[transfer] = (edges.massFlow[transfer] * pistons.transferOpening[j]) / transferArea;
      } else edges.close(transfer);
      if (exhaustArea > 0) {
        if (exhaustTables !== null) this.openByTable(exhaustTables, exhaust, j, exhaustArea);
        else {
          edges.forward[exhaust] = exhaustDischarge.forward * exhaustArea;
          edges.backward[exhaust] = exhaustDischarge.backward * exhaustArea;
        }
        const outwards = flow.set(exhaust);
        edges.openingRate[exhaust] = (edges.massFlow[exhaust] * pistons.exhaustOpening[j]) / exhaustArea;
        if (outwards) this.carryScavenged(j, transfer, exhaust);
      } else edges.close(exhaust);
    }
  }

  /** Opens an edge by the coefficient that its opening and the present pressures have in a table. */
  private openByTable(tables: DirectionTables, edge: number, j: number, area: number): void {
    const { edges, gas } = this;
    const before = gas.pressure[edges.from[edge]];
    const behind = gas.pressure[edges.to[edge]];
    const opening = area * tables.perFull[j];
    if (before >= behind) edges.forward[edge] = area * tables.forward.at(opening, before / behind);
    else edges.backward[edge] = area * tables.backward.at(opening, behind / before);
  }

  /** Lets a flow be that of another density than the bulk's: `root` of its ratio to it [-]. */
  private thin(edge: number, root: number): void {
    const { edges } = this;
    edges.massFlow[edge] *= root;
    edges.slopeFrom[edge] *= root;
    edges.slopeTo[edge] *= root;
    edges.openingRate[edge] *= root;
  }

  /** Replaces the bulk gas that the exhaust would carry by what the scavenging law lets go. */
  private carryScavenged(j: number, transfer: number, exhaust: number): void {
    const { edges, gas, isFresh, memory, settings } = this;
    const n = gas.set.count;
    const R = gas.set.gasConstants;
    const cylinder = edges.from[exhaust];
    const base = cylinder * n;
    let purity = 0;
    for (let k = 0; k < n; k++) if (isFresh[k] === 1) purity += gas.fraction[base + k];

    const stale = memory.stalePurity(j);
    let leaving = purity;
    let beta = 0;
    if (purity > stale && stale < 1) {
      beta = this.law.evaluate((purity - stale) / (1 - stale));
      leaving = stale + (1 - stale) * beta;
    }
    const { zones } = this;
    const split = zones !== null && zones.split[j] === 1;
    if (split) this.thin(exhaust, 1 / Math.sqrt(zones.spaciousness(j, beta)));
    const freshScale = purity > 0 ? leaving / purity : 1;
    const burnedScale = purity < 1 ? (1 - leaving) / (1 - purity) : 1;

    const outflow = edges.massFlow[exhaust];
    const inflow = edges.massFlow[transfer];
    const straight =
      inflow > 0 && outflow > 0 ? Math.min(settings.shortCircuitShare[j] * inflow, outflow) / outflow : 0;

    const at = exhaust * edges.stride;
    const passage = transfer * edges.stride;
    const T = gas.temperature[cylinder];
    let enthalpy = 0;
    if (zones !== null) {
      zones.leaving[j] = beta;
      zones.straight[j] = straight;
      if (split) enthalpy = zones.enthalpyOf(j, beta);
    }
    for (let k = 0; k < n; k++) {
      const share = (isFresh[k] === 1 ? freshScale : burnedScale) * gas.fraction[base + k];
      if (!split) enthalpy += share * (gas.energyOf[base + k] + R[k] * T);
      edges.carried[at + k] = share + straight * (edges.carried[passage + k] - share);
    }
    edges.carried[at + n] = enthalpy + straight * (edges.carried[passage + n] - enthalpy);
  }
}
