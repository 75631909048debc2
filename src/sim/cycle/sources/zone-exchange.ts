import { mixingRate, shiftByInflow, shiftByOutflow } from '../../scavenging/zone-law.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { Source } from '../instant.ts';
import type { Memory } from '../memory.ts';
import type { Pistons } from '../pistons.ts';
import type { Zones } from '../zones.ts';
import type { CylinderWalls } from './cylinder-walls.ts';

/**
 * What changes the fresh zone's volume share in every cylinder: flows through the windows by shiftByInflow and shiftByOutflow, mixing by
 * mixingRate, and the walls, to which each zone gives heat by its own temperature over its share of the area:
 *
 *   d delta / dt = sum of mdot c - (k + k_w) delta,   k_w = h A (kappa / gamma) / (m R) phi (1 - phi) / (phi_m (1 - phi_m))
 *
 * c: change per kilogram [1/kg]; k, k_w [1/s]; h [W/(m^2 K)], A [m^2]; kappa = gamma - 1. Once the windows are shut k is the highest rate, and by the spark one zone is left.
 * The total heat is the cylinder's own; only its parting is told here. Gas past the rings and fuel injected count as the bulk.
 *
 * Numerics: explicit but for the flows, whose implicit corrections change delta as they change the masses (`follow`); every k is below
 * the highest rate, one over several degrees of crank.
 */
export class ZoneExchange implements Source {
  readonly recordCount = 0;
  recordAt = 0;
  /** Change per kilogram through either window, now and where the step was linearised [1/kg]. */
  private readonly byTransfer: Float64Array;
  private readonly byExhaust: Float64Array;
  private readonly frozenTransfer: Float64Array;
  private readonly frozenExhaust: Float64Array;
  private readonly isFresh: Uint8Array;

  /** @param highest - rate at which zones mix once the windows are shut [1/s] */
  constructor(
    private readonly through: { readonly transfers: readonly number[]; readonly exhausts: readonly number[] },
    fresh: readonly boolean[],
    private readonly highest: number,
    private readonly zones: Zones,
    private readonly walls: CylinderWalls,
    private readonly pistons: Pistons,
    private readonly memory: Memory,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    const n = zones.count;
    this.byTransfer = new Float64Array(n);
    this.byExhaust = new Float64Array(n);
    this.frozenTransfer = new Float64Array(n);
    this.frozenExhaust = new Float64Array(n);
    this.isFresh = Uint8Array.from(fresh, (is) => (is ? 1 : 0));
  }

  addTo(rates: Float64Array): void {
    const { zones, pistons, edges, through, byTransfer, byExhaust } = this;
    for (let j = 0; j < zones.count; j++) {
      const at = zones.stateAt + j;
      byTransfer[j] = 0;
      byExhaust[j] = 0;
      if (pistons.transferArea[j] === 0 && pistons.exhaustArea[j] === 0) {
        rates[at] -= this.highest * zones.shift[j];
        continue;
      }
      const transfer = through.transfers[j];
      const exhaust = through.exhausts[j];
      const inflow = edges.massFlow[transfer];
      const outflow = edges.massFlow[exhaust];
      const entering = inflow > 0 ? this.entering(j, transfer, edges.from[transfer]) : 0;
      byTransfer[j] = entering;
      if (outflow < 0) byExhaust[j] = this.entering(j, exhaust, edges.to[exhaust]);
      else if (outflow > 0) {
        const straight = zones.straight[j];
        byExhaust[j] = (1 - straight) * this.leaving(j) - straight * entering;
      }
      rates[at] +=
        inflow * byTransfer[j] + outflow * byExhaust[j] - this.decay(j, inflow, outflow) * zones.shift[j];
    }
  }

  /** Of what an edge carries out of a node into cylinder j. */
  private entering(j: number, edge: number, node: number): number {
    const { zones, gas, edges, isFresh } = this;
    const n = gas.set.count;
    const R = gas.set.gasConstants;
    const at = edge * edges.stride;
    const cylinder = zones.nodes[j];
    let purity = 0;
    let freshR = 0;
    let gasConstant = 0;
    for (let k = 0; k < n; k++) {
      const part = edges.carried[at + k] * R[k];
      gasConstant += part;
      if (isFresh[k] === 1) {
        purity += edges.carried[at + k];
        freshR += part;
      }
    }
    if (zones.deficit[j] === 1) return 0;
    // With burned gas comes the unburned share that the old gas has.
    const stale = this.memory.stalePurity(j);
    if (stale < 1) freshR -= ((stale * (1 - purity)) / (1 - stale)) * zones.freshConstant[j];
    return shiftByInflow(
      gas.temperature[node] / gas.temperature[cylinder],
      freshR,
      gasConstant,
      zones.volumeShare[j],
      zones.mixedShare[j],
      gas.mass[cylinder] * gas.gasConstant[cylinder],
    );
  }

  private leaving(j: number): number {
    const { zones, gas } = this;
    if (zones.split[j] === 0) return 0;
    return shiftByOutflow(
      zones.leaving[j],
      zones.massShare[j],
      zones.volumeShare[j],
      zones.mixedShare[j],
      gas.mass[zones.nodes[j]],
    );
  }

  /** Rate at which delta dies away in a cylinder whose windows are open [1/s]. */
  private decay(j: number, inflow: number, outflow: number): number {
    const { zones, gas, walls, pistons, highest } = this;
    if (zones.split[j] === 0) return highest;
    const node = zones.nodes[j];
    const mass = gas.mass[node];
    const phi = zones.volumeShare[j];
    const mixed = zones.mixedShare[j];
    const area = walls.crownArea + walls.headArea + walls.linerPerimeter * pistons.travel[j];
    const toWalls =
      (walls.coefficient[j] * area * (1 - 1 / gas.gamma[node]) * phi * (1 - phi)) /
      (mass * gas.gasConstant[node] * mixed * (1 - mixed));
    const passing = (0.5 * (Math.abs(inflow) + Math.abs(outflow))) / mass;
    const mixing = outflow > 0 ? mixingRate(zones.leaving[j], zones.massShare[j], passing, highest) : 0;
    return toWalls + mixing;
  }

  /** Copies what a kilogram through a window changes at the present instant; it holds until the next call. */
  freeze(): void {
    this.frozenTransfer.set(this.byTransfer);
    this.frozenExhaust.set(this.byExhaust);
  }

  /** Lets delta follow corrections of the edges' flows [kg]. */
  follow(r: Float64Array, flows: Float64Array): void {
    const { zones, through, frozenTransfer, frozenExhaust } = this;
    for (let j = 0; j < zones.count; j++)
      r[zones.stateAt + j] +=
        flows[through.transfers[j]] * frozenTransfer[j] + flows[through.exhausts[j]] * frozenExhaust[j];
  }
}
