import type { GasStates } from './gas-states.ts';
import { MAX_TEMPERATURE, MIN_TEMPERATURE } from './gas-states.ts';
import type { Memory } from './memory.ts';
import type { Pistons } from './pistons.ts';

/** Volume share of a zone below which its own temperature fades into that of the whole [-]. */
const FADING = 2e-3;
/** Shift of the fresh zone's volume share below which a cylinder is one zone [-]. */
const NOTHING = 1e-9;
/** Mass share from which a zone must lie within the accepted range of temperature [-]. */
const COUNTS = 0.02;
/** Purities closer than this are one: of the gas at the opening of the exhaust, and a moment later [-]. */
const ALIKE = 1e-9;

/**
 * The fresh and the burned zone of every cylinder, unpacked from its masses, its energy and one state each, delta of zone-law.ts:
 *
 *   T_f = x_f T*,  T_b = x_b T*,   x_f = 1 + delta / phi_m,  x_b = 1 - delta / (1 - phi_m)
 *   m_f u_f(T_f) + m_b u_b(T_b) = U    (Newton in T*)
 *
 * The fresh zone is what came in since the exhaust opened, xi = (chi - chi_0) / (1 - chi_0) of the mass; the burned zone is the old gas with its
 * unburned share chi_0. The pressure stays that of all the gas at its one temperature T, which the implicit step knows how to follow; were
 * specific heats constant and alike, T* = T. T* / T - 1 says by how much the zones' volumes fail to fill the cylinder at that pressure.
 *
 * Behind shut windows nothing asks for the temperatures: there `shift` alone is kept, the rest is of an earlier instant.
 *
 * Units: T [K], shares [-], energies absolute [J/kg].
 * Numerics: delta fades as delta y^2 / (y^2 + w^2), y = phi_m (1 - phi_m), w = 0.002, so that a vanishing zone has no wild temperature. T* starts
 * from its last ratio to T; the last Newton step is below 1.5e-3, its square is what is left.
 */
export class Zones {
  readonly count: number;
  /** Where the states stand. */
  stateAt = 0;
  /** delta as it stands in the state. */
  readonly shift: Float64Array;
  /** Whether a cylinder has two temperatures now. */
  readonly split: Uint8Array;
  /** Whether the cylinder holds less fresh charge than when its exhaust opened, so that what enters only makes that good. */
  readonly deficit: Uint8Array;
  /** xi, phi and phi_m of the fresh zone. */
  readonly massShare: Float64Array;
  readonly volumeShare: Float64Array;
  readonly mixedShare: Float64Array;
  /** Of the fresh constituents of a cylinder [J/(kg K)]. */
  readonly freshConstant: Float64Array;
  /** Of either zone. */
  readonly freshTemperature: Float64Array;
  readonly burnedTemperature: Float64Array;
  /** Of every constituent in either zone, cylinder by cylinder. */
  readonly freshEnergy: Float64Array;
  readonly burnedEnergy: Float64Array;
  /** What the exhaust takes: share of the fresh zone in what leaves the cylinder, and share of all that crossed straight over. */
  readonly leaving: Float64Array;
  readonly straight: Float64Array;
  /** T* / T. */
  readonly ratio: Float64Array;
  private readonly freshHeat: Float64Array;
  private readonly burnedHeat: Float64Array;
  private readonly isFresh: Uint8Array;

  constructor(
    readonly nodes: readonly number[],
    fresh: readonly boolean[],
    private readonly pistons: Pistons,
    private readonly memory: Memory,
    private readonly gas: GasStates,
  ) {
    this.count = nodes.length;
    const each = () => new Float64Array(this.count);
    const perConstituent = () => new Float64Array(this.count * gas.set.count);
    this.shift = each();
    this.split = new Uint8Array(this.count);
    this.deficit = new Uint8Array(this.count);
    this.massShare = each();
    this.volumeShare = each();
    this.mixedShare = each();
    this.freshConstant = each();
    this.freshTemperature = each();
    this.burnedTemperature = each();
    this.freshEnergy = perConstituent();
    this.burnedEnergy = perConstituent();
    this.freshHeat = perConstituent();
    this.burnedHeat = perConstituent();
    this.leaving = each();
    this.straight = each();
    this.ratio = each().fill(1);
    this.isFresh = Uint8Array.from(fresh, (is) => (is ? 1 : 0));
  }

  /**
   * Unpacks the zones of all cylinders; the gas must be unpacked.
   * @param strictly - whether a zone that counts must be in range; on the way to a solution it is held at the limit
   * @returns false where a zone that counts is out of range; `gas.failedNode` then says where
   */
  load(y: Float64Array, strictly: boolean): boolean {
    const { gas, memory, pistons, nodes, isFresh, mixedShare, massShare, volumeShare } = this;
    const n = gas.set.count;
    const R = gas.set.gasConstants;
    for (let j = 0; j < nodes.length; j++) {
      const node = nodes[j];
      this.shift[j] = y[this.stateAt + j];
      if (pistons.exhaustArea[j] === 0 && pistons.transferArea[j] === 0) {
        this.split[j] = 0;
        this.ratio[j] = 1;
        continue;
      }
      const base = node * n;
      let purity = 0;
      let freshR = 0;
      for (let k = 0; k < n; k++)
        if (isFresh[k] === 1) {
          purity += gas.fraction[base + k];
          freshR += gas.fraction[base + k] * R[k];
        }
      const stale = memory.stalePurity(j);
      const xi = purity > stale && stale < 1 ? Math.min(1, (purity - stale) / (1 - stale)) : 0;
      const mixed = xi > 0 ? (freshR * xi) / (purity * gas.gasConstant[node]) : 0;
      massShare[j] = xi;
      this.deficit[j] = stale - purity > ALIKE ? 1 : 0;
      this.freshConstant[j] = purity > 0 ? freshR / purity : 0;
      mixedShare[j] = mixed;
      const both = mixed * (1 - mixed);
      const square = both * both;
      const shift = (this.shift[j] * square) / (square + FADING * FADING);
      if (!(Math.abs(shift) > NOTHING)) {
        this.split[j] = 0;
        volumeShare[j] = mixed;
        this.freshTemperature[j] = gas.temperature[node];
        this.burnedTemperature[j] = gas.temperature[node];
        this.ratio[j] = 1;
        continue;
      }
      this.split[j] = 1;
      volumeShare[j] = mixed + shift;
      if (!this.part(j, node, y, purity, strictly)) {
        gas.failedNode = node;
        return false;
      }
    }
    return true;
  }

  /** Finds the temperatures of two zones of a known ratio; false where one that counts is out of range. */
  private part(j: number, node: number, y: Float64Array, purity: number, strictly: boolean): boolean {
    const { gas, isFresh, freshEnergy, burnedEnergy, freshHeat, burnedHeat } = this;
    const { set } = gas;
    const n = set.count;
    const base = node * n;
    const at = j * n;
    const xi = this.massShare[j];
    const mixed = this.mixedShare[j];
    const U = y[node * gas.stride + n] / gas.mass[node];
    let T = this.ratio[j] * gas.temperature[node];
    const coolest = MIN_TEMPERATURE / T;
    const hottest = MAX_TEMPERATURE / T;
    let fresh = this.volumeShare[j] / mixed;
    let burned = (1 - this.volumeShare[j]) / (1 - mixed);
    if (!(fresh >= coolest && fresh <= hottest)) {
      if (strictly && !(xi < COUNTS)) return false;
      fresh = fresh < coolest ? coolest : hottest;
      burned = (1 - mixed * fresh) / (1 - mixed);
    } else if (!(burned >= coolest && burned <= hottest)) {
      if (strictly && !(1 - xi < COUNTS)) return false;
      burned = burned < coolest ? coolest : hottest;
      fresh = (1 - (1 - mixed) * burned) / mixed;
    }
    // Of the cylinder's fresh constituents, what is in the fresh zone; the rest is the old gas's.
    const share = xi / purity;
    for (let iteration = 0; iteration < 8; iteration++) {
      set.evaluate(fresh * T, freshEnergy, freshHeat, at);
      set.evaluate(burned * T, burnedEnergy, burnedHeat, at);
      let u = 0;
      let slope = 0;
      for (let k = 0; k < n; k++) {
        const inFresh = isFresh[k] === 1 ? share : 0;
        const f = gas.fraction[base + k];
        u += f * (inFresh * freshEnergy[at + k] + (1 - inFresh) * burnedEnergy[at + k]);
        slope += f * (inFresh * fresh * freshHeat[at + k] + (1 - inFresh) * burned * burnedHeat[at + k]);
      }
      const step = (U - u) / slope;
      T += step;
      if (Math.abs(step) < 1.5e-3 * T) {
        for (let k = 0; k < n; k++) {
          freshEnergy[at + k] += fresh * step * freshHeat[at + k];
          burnedEnergy[at + k] += burned * step * burnedHeat[at + k];
        }
        break;
      }
    }
    if (!(T > MIN_TEMPERATURE && T < MAX_TEMPERATURE)) return false;
    this.ratio[j] = T / gas.temperature[node];
    this.freshTemperature[j] = fresh * T;
    this.burnedTemperature[j] = burned * T;
    this.volumeShare[j] = mixed * fresh;
    return true;
  }

  /**
   * Specific enthalpy of what leaves with a share beta of the fresh zone, absolute [J/kg]: energies at the zones' temperatures, and p
   * times their volumes. With beta = xi that is the bulk's.
   */
  enthalpyOf(j: number, beta: number): number {
    const { gas, isFresh, freshEnergy, burnedEnergy, memory } = this;
    const n = gas.set.count;
    const node = this.nodes[j];
    const base = node * n;
    const at = j * n;
    const xi = this.massShare[j];
    const stale = memory.stalePurity(j);
    const purity = stale + (1 - stale) * xi;
    const fromFresh = beta / purity;
    const fromOld = ((1 - beta) * stale) / purity;
    const burned = purity < 1 ? ((1 - beta) * (1 - stale)) / (1 - purity) : 0;
    let h = gas.gasConstant[node] * gas.temperature[node] * this.spaciousness(j, beta);
    for (let k = 0; k < n; k++) {
      const f = gas.fraction[base + k];
      const inFresh = isFresh[k] === 1 ? fromFresh : 0;
      const inBurned = isFresh[k] === 1 ? fromOld : burned;
      h += f * (inFresh * freshEnergy[at + k] + inBurned * burnedEnergy[at + k]);
    }
    return h;
  }

  /**
   * Specific volume of what leaves with a share beta of the fresh zone, over the bulk's [-]; a flow through a given opening goes with
   * one over its root.
   */
  spaciousness(j: number, beta: number): number {
    const xi = this.massShare[j];
    const phi = this.volumeShare[j];
    return (beta * phi) / xi + ((1 - beta) * (1 - phi)) / (1 - xi);
  }
}
