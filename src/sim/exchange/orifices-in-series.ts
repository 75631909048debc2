import { findRoot } from '../numerics/find-root.ts';

/** One of several openings that gas passes one after the other. */
export interface Restriction {
  /** Discharge coefficient times area of its throat [m^2], > 0. */
  readonly CdA: number;
  /** Share of the drop to its throat that a diffuser behind it wins back, 0 <= eta < 1 [-]; 0 is a plain orifice. */
  readonly recovered: number;
}

/** What all of them pass. */
export interface Passed {
  /** Behind the last one over before the first, at which this flow is reached; lower when choked [-]. */
  readonly ratio: number;
  /** mdot sqrt(R T0) / p0 [m^2]. */
  readonly flow: number;
}

/** Throat Mach number from which an opening counts as choked: beyond it the flow is the same to 1e-12. */
const SONIC = 1 - 1e-7;
const STEPS = 60;

/**
 * Pressure behind openings in series over the pressure before them, when they pass a flow. No volume lies between; the gas comes
 * to rest behind each throat at its old temperature, and at a pressure lower by what is not won back:
 *
 *   f / CdA = (p/p0) sqrt(g) M (1 + (g-1)/2 M^2)^(-(g+1)/(2(g-1)))      f = mdot sqrt(R T0) / p0, p before this throat
 *   p_throat / p = (1 + (g-1)/2 M^2)^(-g/(g-1)),   p' = p - (1 - eta) (p - p_throat)
 *
 * @param flow  - f [m^2], >= 0
 * @param gamma - ratio of specific heats, > 1 [-]
 * @returns p' of the last over p0 of the first [-]; null where one of them is choked before it passes so much
 *
 * Valid: adiabatic, steady, no swirl from one into the next, throats far enough apart for the gas to come to rest.
 * Numerics: Newton's method for M from below, where the flow function is concave: it rises to the root.
 * Source: Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, vol. 1, 1953, ch. 4 (isentropic throat); the recovered
 * share is a coefficient, as in Miller, Internal Flow Systems, 1990, ch. 11.
 */
export function ratioBehind(series: readonly Restriction[], flow: number, gamma: number): number | null {
  const k = (gamma - 1) / 2;
  const n = (gamma + 1) / (2 * (gamma - 1));
  let ratio = 1;
  for (const { CdA, recovered } of series) {
    const wanted = flow / (CdA * ratio * Math.sqrt(gamma));
    let mach = wanted;
    for (let step = 0; ; step++) {
      if (!(mach < SONIC) || step === STEPS) return null;
      const square = 1 + k * mach * mach;
      const passed = square ** -n;
      const miss = wanted - mach * passed;
      if (miss < 1e-15 * wanted || wanted === 0) break;
      mach += miss / ((passed * (1 - mach * mach)) / square);
    }
    const throat = (1 + k * mach * mach) ** (-gamma / (gamma - 1));
    ratio *= 1 - (1 - recovered) * (1 - throat);
  }
  return ratio;
}

/** The most that openings in series pass, and the highest pressure ratio at which they do. */
export function chokedInSeries(series: readonly Restriction[], gamma: number): Passed {
  const psi = Math.sqrt(gamma) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)));
  let possible = 0;
  let flow = Math.min(...series.map(({ CdA }) => CdA)) * psi;
  // Whether a flow can be passed changes once: no root of a function is at hand, so it is halved down to.
  for (let half = flow; half > 1e-13 * flow; half /= 2) {
    const tried = possible + half;
    if (tried <= flow && ratioBehind(series, tried, gamma) !== null) possible = tried;
  }
  flow = possible;
  return { flow, ratio: ratioBehind(series, flow, gamma) ?? 1 };
}

/**
 * What openings in series pass at a pressure ratio, mdot sqrt(R T0) / p0 [m^2].
 *
 * @param ratio - behind the last over before the first, 0 to 1 [-]
 */
export function flowInSeries(series: readonly Restriction[], ratio: number, gamma: number): number {
  const choked = chokedInSeries(series, gamma);
  return passedAt(series, ratio, gamma, choked);
}

function passedAt(series: readonly Restriction[], ratio: number, gamma: number, choked: Passed): number {
  if (ratio <= choked.ratio) return choked.flow;
  if (ratio >= 1) return 0;
  return findRoot(
    (flow) => (ratioBehind(series, flow, gamma) ?? 0) - ratio,
    0,
    choked.flow,
    1e-13 * choked.flow,
  );
}

/**
 * The one orifice that passes what openings in series pass, as a table of its effective area over pressure ratio:
 *
 *   CdA_1(r) = f(r) / psi(r)      psi: flow function of the isentropic orifice, constant below the critical ratio
 *
 * At r = 1 that is the incompressible sum, 1/CdA_1^2 = sum (1 - eta_i) / CdA_i^2; it grows as r falls, since the throat that chokes
 * first rules alone. Worked out once for an operating point, so that a step pays for a look-up only.
 *
 * Numerics: straight lines between 128 even places from 1 down to where nothing changes any more; within 1e-4 of the law, and worst
 * beside the ratios at which a throat chokes.
 */
export class SeriesArea {
  private readonly lowest: number;
  private readonly perRatio: number;
  private readonly areas: Float64Array;

  /** @param gamma - of the gas that passes [-] */
  constructor(series: readonly Restriction[], gamma: number) {
    const INTERVALS = 128;
    const critical = (2 / (gamma + 1)) ** (gamma / (gamma - 1));
    const choked = chokedInSeries(series, gamma);
    this.lowest = Math.min(critical, choked.ratio);
    this.perRatio = INTERVALS / (1 - this.lowest);
    this.areas = Float64Array.from({ length: INTERVALS + 1 }, (_, i) => {
      const ratio = this.lowest + i / this.perRatio;
      return i === INTERVALS
        ? 1 / Math.sqrt(series.reduce((sum, { CdA, recovered }) => sum + (1 - recovered) / CdA ** 2, 0))
        : passedAt(series, ratio, gamma, choked) / isentropicFlow(Math.max(ratio, critical), gamma);
    });
  }

  /** Without a pressure difference [m^2]. */
  get atRest(): number {
    return this.areas[this.areas.length - 1];
  }

  /** @param ratio - behind over before, 0 to 1 [-]; @returns effective area [m^2] */
  at(ratio: number): number {
    const { areas } = this;
    const place = (ratio - this.lowest) * this.perRatio;
    if (place <= 0) return areas[0];
    const i = Math.min(Math.floor(place), areas.length - 2);
    return areas[i] + (place - i) * (areas[i + 1] - areas[i]);
  }
}

/** psi of the isentropic orifice, mdot sqrt(R T0) / (CdA p0) [-]; from the critical ratio to below 1. */
function isentropicFlow(ratio: number, gamma: number): number {
  return ratio ** (1 / gamma) * Math.sqrt(((2 * gamma) / (gamma - 1)) * (1 - ratio ** ((gamma - 1) / gamma)));
}
