import { LEAST_RATIO, ratioPower } from '../numerics/ratio-power.ts';

/**
 * The isentropic orifice on the hot path, with the slopes a linearly implicit step needs, smooth through zero pressure
 * difference.
 *
 *   mdot = CdA p0 / sqrt(R T0) psi(pr) r(dp)            pr = p1 / p0, dp = p0 - p1 >= 0
 *   psi^2 = 2 g/(g-1) a (a - pr),  a = pr^(1/g)         below choking; constant beyond
 *   r = ( dp^2 / (dp^2 + eps^2) )^(1/4)
 *
 * r turns the square root into a straight line within about eps of dp = 0. It raises the pressure difference that
 * carries a given flow by (eps / dp)^2 / 2, so eps = 0.14 dp10, with dp10 the difference that carries a tenth of the
 * design flow, changes that difference by 1 %; `smoothingPressure` uses 0.1.
 *
 * Units: CdA [m^2], pressures [Pa], R [J/(kg K)], T0 [K], flow [kg/s], slopes [kg/(s Pa)].
 * Numerics: one power per call. Below 1 - pr = 1e-6, psi^2 = 2 x - 3 x^2 / g with
 * x = 1 - pr (error below 1e-12 relative). Slopes hold T0, R and g and are those of psi^2 r, flow / dp near zero:
 * twice the slope of the square root, which steadies the step, and no less than the true one where r bends it. They run out
 * continuously towards choking: where they jump, the map from period to period jumps with them, and its fixed point can lie
 * on the jump.
 * Source: Heywood, Internal Combustion Engine Fundamentals, 1988, app. C.
 */
export class SmoothOrifice {
  /** What `evaluate` reads. Fields, because a double passed to a call is boxed where the compiler does not inline it. */
  CdA = 0;
  p0 = 1;
  T0 = 300;
  R = 287;
  gamma = 1.4;
  p1 = 1;
  eps = 1;
  flow = 0;
  /** What the implicit step takes for d flow / d p0 and d flow / d p1. */
  slopeUp = 0;
  slopeDown = 0;

  evaluate(): void {
    const { CdA, p0, T0, R, gamma, p1, eps } = this;
    const scale = CdA / Math.sqrt(R * T0);
    const pr = p1 / p0;
    const x = 1 - pr;
    const dp = p0 - p1;
    const dp2 = dp * dp;
    const eps2 = eps * eps;
    let psi: number;
    let steepness: number; // - d ln psi / d pr
    if (x < 1e-6) {
      if (dp2 < 1e-6 * eps2) {
        // The straight line through zero: psi / sqrt(dp) tends to sqrt(2 / p0).
        const line = (scale * p0 * Math.sqrt(2 / p0)) / Math.sqrt(eps);
        this.flow = line * dp;
        this.slopeUp = line;
        this.slopeDown = -line;
        return;
      }
      psi = Math.sqrt(2 * x - (3 * x * x) / gamma);
      steepness = (1 - (3 * x) / gamma) / (psi * psi);
    } else {
      // Every gas with gamma below 1.8 is choked at the least ratio.
      const a = pr > LEAST_RATIO ? ratioPower(pr, 1 / gamma) : Infinity;
      if (2 * a >= (gamma + 1) * pr) {
        // Beyond choking, where psi(pr) would fall again.
        this.flow = scale * p0 * chokedFlow(gamma);
        this.slopeUp = this.flow / p0;
        this.slopeDown = 0;
        return;
      }
      psi = Math.sqrt(((2 * gamma) / (gamma - 1)) * a * (a - pr));
      steepness = ((gamma + 1) * pr - 2 * a) / (2 * gamma * pr * (a - pr));
    }
    const r = dp2 > 1e8 * eps2 ? 1 : Math.sqrt(Math.sqrt(dp2 / (dp2 + eps2)));
    this.flow = scale * p0 * psi * r;
    this.slopeDown = (-2 * steepness * this.flow) / p0;
    this.slopeUp = (this.flow - p1 * this.slopeDown) / p0;
  }
}

/** psi at and beyond choking: sqrt(g) (2/(g+1))^((g+1)/(2(g-1))). */
function chokedFlow(gamma: number): number {
  return Math.sqrt(gamma) * Math.pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
}

/**
 * Pressure scale of the smoothing: a tenth of the difference that carries a tenth of the design flow.
 *
 * @param designFlow - instantaneous flow the opening is there for [kg/s]
 * @param CdA        - its largest effective area [m^2]
 * @param density    - of the gas upstream [kg/m^3]
 * @returns eps [Pa], > 0
 */
export function smoothingPressure(designFlow: number, CdA: number, density: number): number {
  const velocity = (0.1 * designFlow) / CdA; // density times speed
  return Math.max(0.1 * ((velocity * velocity) / (2 * density)), 1e-6);
}
