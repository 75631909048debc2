import { workPerVolume } from '../../blower/internal-compression.ts';
import { rootsRipple } from '../../blower/roots-ripple.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { Instant } from '../instant.ts';
import { BlowerFlow } from './blower-flow.ts';

export interface DisplacementDrive {
  /** Volume displaced by all blowers per radian of the crank, mean [m^3/rad]. */
  readonly displacementPerRadian: number;
  /** Volume that the mesh takes back, beside what is displaced net [m^3/rad]. */
  readonly carriedBackPerRadian: number;
  readonly lobes: number;
  /** Rotor speed over crank speed [-]. */
  readonly ratio: number;
  /** Amplitude of all blowers' ripple after helix and phases have evened it; 0 where its phase is averaged [-]. */
  readonly rippleDepth: number;
  /** Rotor angle at crank angle 0 of one blower that ripples as all of them do [rad]. */
  readonly phase: number;
  /** Built-in volume ratio; 1 for Roots blowers [-]. */
  readonly volumeRatio: number;
}

/**
 * A displacement blower: it carries gas of the inlet box's density at the displaced rate, and without internal compression does
 * the work of pushing it against the full pressure rise.
 *
 *   mdot = rho_in Vdot(theta),   W = Vdot w, less the casing's share, into the plenum
 *   w = p_plenum - p_box   without internal compression, else `workPerVolume`
 *
 * rho_in of the inlet box [kg/m^3], Vdot all blowers' displacement times its ripple [m^3/s], W [W].
 *
 * The mesh takes pockets of volume V_c back with gas of the plenum, which open to the inlet box: as much more goes forward, so
 * that the net displacement is the stated one,
 *
 *   forward rho_in (Vdot + V_c),  back rho_plenum V_c;   (p_plenum - p_box) V_c of the forward work comes back from the box's gas
 *
 * Valid: back-flow into the opening pocket is not resolved, so pulses read low.
 * Slip is an opening of its own. Source: Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 6.8.
 */
export class DisplacementBlower extends BlowerFlow {
  private work = 0;
  /** Of it, what is taken out of the box's gas. */
  private returned = 0;

  /**
   * @param carriedBack - edge of what the mesh takes back, -1 where none is reckoned
   */
  constructor(
    edge: number,
    private readonly carriedBack: number,
    private readonly drive: DisplacementDrive,
    casingHeatShare: number,
    instant: Instant,
    gas: GasStates,
    edges: EdgeFlows,
  ) {
    super(edge, casingHeatShare, instant, gas, edges);
  }

  protected get fluidWork(): number {
    return this.work;
  }

  get powerIntoPlenum(): number {
    return this.work + this.returned - this.casingHeatShare * this.work;
  }

  get powerIntoBox(): number {
    return -this.returned;
  }

  setFlows(): void {
    const { drive, instant, gas, edges, edge } = this;
    const box = edges.from[edge];
    const taken = drive.carriedBackPerRadian * instant.omega;
    const volumeRate =
      drive.displacementPerRadian *
        instant.omega *
        rootsRipple(
          drive.phase + drive.ratio * (instant.before + instant.theta),
          drive.lobes,
          drive.rippleDepth,
        ) +
      taken;
    const perPressure = volumeRate / (gas.gasConstant[box] * gas.temperature[box]);
    edges.massFlow[edge] = perPressure * gas.pressure[box];
    edges.slopeFrom[edge] = perPressure;
    edges.slopeTo[edge] = 0;
    edges.carryBulk(edge, box);
    const plenum = edges.to[edge];
    this.work =
      volumeRate * workPerVolume(drive.volumeRatio, gas.pressure[box], gas.pressure[plenum], gas.gamma[box]);
    if (this.carriedBack >= 0) this.carryBack(taken, box, plenum);
  }

  private carryBack(taken: number, box: number, plenum: number): void {
    const { gas, edges, carriedBack } = this;
    const perPressure = taken / (gas.gasConstant[plenum] * gas.temperature[plenum]);
    edges.massFlow[carriedBack] = perPressure * gas.pressure[plenum];
    edges.slopeFrom[carriedBack] = perPressure;
    edges.slopeTo[carriedBack] = 0;
    edges.carryBulk(carriedBack, plenum);
    this.returned = taken * (gas.pressure[plenum] - gas.pressure[box]);
    this.work -= this.returned;
  }
}
