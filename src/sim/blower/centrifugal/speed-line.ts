import type { Impeller } from '../../engine.ts';
import { wiesnerSlipFactor } from './slip-factor.ts';

/** Slope that the head keeps where it would cease to fall, over the head at best flow, per best flow [-]. */
const LEAST_FALL = 0.2;
/** Discharge coefficient of the wheel for gas that is blown back through it. Typical of a sharp-edged passage [-]. */
const BACKWARD = 0.6;

/**
 * One speed line of a centrifugal blower for all speeds: head, work and efficiency over flow, made dimensionless.
 *
 *   x = V / V*                            inlet volume flow over that of best efficiency; V* goes with speed
 *   work        psi = mu (sigma - kappa x),   kappa = tan(beta) V* / (pi D b U)        enthalpy rise over U^2
 *   efficiency  eta = eta* (1 - ((x - 1)/c)^2),   c by the efficiency at half flow for x < 1, by the flow without head for x > 1
 *   head        psi eta                   isentropic enthalpy rise over U^2
 *
 * mu work factor (disc friction), sigma slip factor, beta backsweep, D tip diameter, b exit width [m], U tip speed [m/s].
 *
 * `surge` is where head is highest: to its left a plenum behind a real blower lets the flow collapse and return, over and over. Here
 * head goes on rising instead, by a straight line of a fifth of its best value per best flow, so that every pressure has one flow.
 * Results there are those of a blower that does not surge, and are to be reported as such. Beyond the flow without head it falls by
 * a straight line. What is blown back meets head + (V / (0.6 A))^2 / (2 U^2), A throat area [m^2].
 *
 * Valid: one shape for all speeds, which fits tip speeds well below that of sound; at higher ones the range is narrower. Gas at the
 * exit as dense as at the inlet, so the fall of psi is over-stated. Head falls and is concave where kappa (3 x0 - 2) < sigma.
 * Numerics: head and its slope are continuous; the inverse is closed but for x from near surge to x0, where Newton's method
 * comes from the right on a concave curve and cannot miss. A flatter line leaves cranking without
 * a periodic state, since what little flows turns back and forth at a touch of pressure: of eleven drawn engines that found none with a
 * tenth, seven do with a fifth; nearly a third would be needed for ten, and would bend the line at best flow.
 * Source: Casey & Robinson, A method to estimate the performance map of a centrifugal compressor stage, J. Turbomach. 135, 2013
 * (work line, efficiency over flow coefficient); return flow: Greitzer, J. Eng. Power 98, 1976.
 */
export class SpeedLine {
  readonly slipFactor: number;
  readonly kappa: number;
  /** Flow of highest head, and of none, over best flow [-]. */
  readonly surge: number;
  readonly without: number;
  /** Volume flow over best flow at the head given to `solve`, and how it answers to the head [-]. */
  flow = 0;
  slope = 0;
  private readonly below: number;
  private readonly above: number;
  /** Where the straight line begins, its head there and at no flow, its fall, and that beyond the flow without head. */
  private readonly join: number;
  private readonly headAtJoin: number;
  private readonly headAtRest: number;
  private readonly fall: number;
  private readonly lastSlope: number;
  private readonly backward: number;

  /**
   * @param bestVolume - V* over revolutions: volume that a turn of the wheel carries at best flow [m^3]
   * @param diameter   - D [m]
   */
  constructor(
    private readonly impeller: Impeller,
    bestVolume: number,
    diameter: number,
  ) {
    const { blades, backsweep, exitWidth, efficiencyAtHalf, flowWithoutHead, throatArea } = impeller;
    this.slipFactor = wiesnerSlipFactor(blades, backsweep);
    // V* / (pi D b U) with V* = bestVolume n, U = pi D n.
    const exitFlow = bestVolume / (Math.PI * diameter) ** 2 / exitWidth;
    this.kappa = exitFlow * Math.tan(backsweep);
    this.without = flowWithoutHead;
    this.below = 0.5 / Math.sqrt(1 - efficiencyAtHalf);
    this.above = flowWithoutHead - 1;
    this.fall = LEAST_FALL * this.curve(1);
    this.surge = Math.max(0, this.whereFalling(0));
    this.join = Math.max(0, this.whereFalling(this.fall));
    this.headAtJoin = this.curve(this.join);
    this.headAtRest = this.headAtJoin + this.fall * this.join;
    this.lastSlope = this.curveSlope(this.without);
    const throughThroat = bestVolume / (BACKWARD * throatArea) / (Math.PI * diameter);
    this.backward = 0.5 * throughThroat * throughThroat;
  }

  /** Enthalpy rise over the square of the tip speed, at a flow over best flow; that of no flow where it is blown back [-]. */
  work(x: number): number {
    return this.impeller.workFactor * (this.slipFactor - this.kappa * Math.max(0, x));
  }

  /** Isentropic enthalpy rise over the square of the tip speed [-]. */
  head(x: number): number {
    if (x < 0) return this.headAtRest - this.fall * x + this.backward * x * x;
    if (x < this.join) return this.headAtJoin + this.fall * (this.join - x);
    return x < this.without ? this.curve(x) : this.lastSlope * (x - this.without);
  }

  /** Isentropic over real enthalpy rise [-]. */
  efficiency(x: number): number {
    return this.head(x) / this.work(x);
  }

  /** Sets `flow`, and `slope` = d flow / d head < 0, from an isentropic enthalpy rise over the square of the tip speed. */
  solve(head: number): void {
    if (head >= this.headAtRest) {
      const half = this.fall / 2;
      const root = Math.sqrt(half * half + this.backward * (head - this.headAtRest));
      this.flow = (half - root) / this.backward;
      this.slope = -0.5 / root;
    } else if (head >= this.headAtJoin) {
      this.flow = this.join - (head - this.headAtJoin) / this.fall;
      this.slope = -1 / this.fall;
    } else if (head <= 0) {
      this.flow = this.without + head / this.lastSlope;
      this.slope = 1 / this.lastSlope;
    } else {
      let x = this.without;
      for (let i = 0; i < 60; i++) {
        const step = (head - this.curve(x)) / this.curveSlope(x);
        x += step;
        if (step > -1e-13) break;
      }
      this.flow = x;
      this.slope = 1 / this.curveSlope(x);
    }
  }

  private curve(x: number): number {
    const off = (x - 1) / (x < 1 ? this.below : this.above);
    return this.work(x) * this.impeller.efficiency * (1 - off * off);
  }

  private curveSlope(x: number): number {
    const { workFactor, efficiency } = this.impeller;
    const c = x < 1 ? this.below : this.above;
    const off = (x - 1) / c;
    return efficiency * (-workFactor * this.kappa * (1 - off * off) - (2 * this.work(x) * off) / c);
  }

  /** Flow at which the curve falls by so much per best flow: the root nearer to 1 of a quadratic in 1 - x. */
  private whereFalling(fall: number): number {
    const { workFactor, efficiency } = this.impeller;
    const { kappa, slipFactor } = this;
    const excess = kappa - fall / (workFactor * efficiency);
    const c = excess > 0 ? this.below : this.above;
    const half = slipFactor - kappa;
    return 1 - (excess * c * c) / (half + Math.sqrt(half * half + 3 * kappa * excess * c * c));
  }
}
