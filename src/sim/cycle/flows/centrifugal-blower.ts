import { INDUCER_RADIUS, inducerChoke } from '../../blower/centrifugal/inducer-choke.ts';
import type { SpeedLine } from '../../blower/centrifugal/speed-line.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { Instant } from '../instant.ts';
import { BlowerFlow } from './blower-flow.ts';

export interface CentrifugalDrive {
  /** Volume that all wheels carry at best flow [m^3/s]. */
  readonly bestFlow: number;
  readonly tipSpeed: number;
  readonly throatArea: number;
}

/**
 * Centrifugal blowers side by side: flow by the pressures on both sides, by the speed line.
 *
 *   head = cp T1 ((p2/p1)^((g-1)/g) - 1) / U^2   ->  x (SpeedLine),   m0 = rho1 V* x
 *   m = m0 / (1 + (m0/m_ch)^8)^(1/8)             m_ch: choked inducer, at rest gas of ambient temperature
 *   W = m psi(x) U^2                              into the plenum; what is blown back takes |m| psi(0) U^2 with it into the box
 *
 * V* all blowers' best volume flow [m^3/s], U tip speed [m/s], rho1, T1 of the inlet box, or rho2 of the plenum for gas blown back.
 *
 * Valid: quasi-steady; no stall or surge, see SpeedLine. The inducer's limit uses the box's pressure and temperature, its blades'
 * Mach number those of ambient air.
 */
export class CentrifugalBlower extends BlowerFlow {
  private intoPlenum = 0;
  private intoBox = 0;
  /** Choking mass flow times sqrt(T1) over p1. */
  private readonly choke: number;

  constructor(
    edge: number,
    private readonly drive: CentrifugalDrive,
    private readonly line: SpeedLine,
    casingHeatShare: number,
    instant: Instant,
    gas: GasStates,
    edges: EdgeFlows,
    ambient: { readonly temperature: number; readonly gasConstant: number; readonly gamma: number },
  ) {
    super(edge, casingHeatShare, instant, gas, edges);
    const { temperature: T, gasConstant: R, gamma } = ambient;
    const sound = Math.sqrt(gamma * R * T);
    const flow = inducerChoke(drive.throatArea, INDUCER_RADIUS * drive.tipSpeed, 1 / (R * T), sound, gamma);
    this.choke = flow * Math.sqrt(T);
  }

  protected get fluidWork(): number {
    return this.intoPlenum + this.intoBox;
  }

  get powerIntoPlenum(): number {
    return (1 - this.casingHeatShare) * this.intoPlenum;
  }

  get powerIntoBox(): number {
    return (1 - this.casingHeatShare) * this.intoBox;
  }

  setFlows(): void {
    const { gas, edges, edge, line, drive } = this;
    const from = edges.from[edge];
    const to = edges.to[edge];
    const p1 = gas.pressure[from];
    const p2 = gas.pressure[to];
    const T1 = gas.temperature[from];
    const R = gas.gasConstant[from];
    const gamma = gas.gamma[from];
    const U2 = drive.tipSpeed * drive.tipSpeed;
    const enthalpy = (gamma / (gamma - 1)) * R * T1;
    const ratio = Math.pow(p2 / p1, (gamma - 1) / gamma);
    line.solve((enthalpy * (ratio - 1)) / U2);
    // How the flow over best flow answers to the two pressures.
    const perPlenum = (line.slope * R * T1 * ratio) / (U2 * p2);
    const perBox = (-line.slope * R * T1 * ratio) / (U2 * p1);
    const x = line.flow;
    if (x >= 0) {
      const best = (drive.bestFlow * p1) / (R * T1);
      const free = best * x;
      const most = (this.choke * p1) / Math.sqrt(T1);
      const r2 = (free / most) * (free / most);
      const r8 = r2 * r2 * r2 * r2;
      const passed = 1 / Math.sqrt(Math.sqrt(Math.sqrt(1 + r8)));
      const flow = free * passed;
      const answer = passed / (1 + r8);
      edges.massFlow[edge] = flow;
      edges.slopeTo[edge] = answer * best * perPlenum;
      edges.slopeFrom[edge] = answer * best * perBox + flow / p1;
      edges.carryBulk(edge, from);
      this.intoPlenum = flow * line.work(flow / best) * U2;
      this.intoBox = 0;
    } else {
      const best = (drive.bestFlow * p2) / (gas.gasConstant[to] * gas.temperature[to]);
      edges.massFlow[edge] = best * x;
      edges.slopeTo[edge] = best * perPlenum + (best * x) / p2;
      edges.slopeFrom[edge] = best * perBox;
      edges.carryBulk(edge, to);
      this.intoPlenum = 0;
      this.intoBox = -best * x * line.work(0) * U2;
    }
  }
}
