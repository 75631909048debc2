import { atm } from '../units.ts';

/** A fuel's laminar flame speed; phi is fuel over stoichiometric, 1/lambda. */
export interface FlameSpeedLaw {
  /** Equivalence ratio of the fastest flame [-]. */
  readonly fastestPhi: number;
  /** Fastest flame at 298 K and 1 atm [m/s]. */
  readonly peak: number;
  /** Speed lost per squared distance from `fastestPhi`, > 0 [m/s]. */
  readonly curvature: number;
  /** Exponents of temperature and pressure: alpha = a0 + a1 phi^a2, likewise beta [-]. */
  readonly temperatureExponent: readonly [number, number, number];
  readonly pressureExponent: readonly [number, number, number];
}

/** alpha = 2.18 - 0.8 (phi - 1), beta = -0.16 + 0.22 (phi - 1). */
const METGHALCHI_KECK = {
  temperatureExponent: [2.98, -0.8, 1],
  pressureExponent: [-0.38, 0.22, 1],
} as const;

/**
 * Sources: Rhodes & Keck, SAE 850047, 1985 (indolene, for petrol); Metghalchi & Keck, Combust. Flame 48:191, 1982
 * (isooctane, methanol). Ethanol takes methanol's law: only ratios of its speeds are used.
 */
export const FLAME_SPEED_LAWS = {
  petrol: {
    fastestPhi: 1.21,
    peak: 0.305,
    curvature: 0.549,
    temperatureExponent: [2.4, -0.271, 3.51],
    pressureExponent: [-0.357, 0.14, 2.77],
  },
  isooctane: { fastestPhi: 1.13, peak: 0.263, curvature: 0.847, ...METGHALCHI_KECK },
  methanol: { fastestPhi: 1.11, peak: 0.369, curvature: 1.405, ...METGHALCHI_KECK },
  ethanol: { fastestPhi: 1.11, peak: 0.369, curvature: 1.405, ...METGHALCHI_KECK },
} as const satisfies Record<string, FlameSpeedLaw>;

const REFERENCE_TEMPERATURE = 298;
/** Equivalence ratios within which the exponents were fitted; held constant outside [-]. */
const LEANEST_FITTED = 0.7;
const RICHEST_FITTED = 1.4;
/** Share of the peak below which the parabola in phi is continued by an exponential [-]. */
const PARABOLA_DOWN_TO = 0.4;
/** Diluent mole fraction above which the dilution law is continued by an exponential [-]. */
const DILUTION_FITTED_TO = 0.25;

/**
 * What diluents leave of the flame speed.
 *
 *   F = 1 - 2.06 x^0.77
 *
 * @param x - mole fraction of burned gas in the unburned mixture, 0..1 [-]; below 0, by what a step falls short in a cylinder without any, counts as 0
 * @returns [-]
 *
 * Valid: to x = 0.25 as fitted. The fit reaches zero at 0.39; two-strokes run near there, so it is continued from 0.25 by an
 * exponential of the same value and slope: always positive, falling. Whether such a charge burns is for completeness.ts to say.
 * Source: Rhodes & Keck, SAE 850047, 1985.
 */
export function dilutionFactor(x: number): number {
  if (x <= 0) return 1;
  if (x <= DILUTION_FITTED_TO) return 1 - 2.06 * x ** 0.77;
  const value = 1 - 2.06 * DILUTION_FITTED_TO ** 0.77;
  const slope = -2.06 * 0.77 * DILUTION_FITTED_TO ** (0.77 - 1);
  return value * Math.exp((slope / value) * (x - DILUTION_FITTED_TO));
}

/** Speed at 298 K and 1 atm [m/s]: peak - curvature (phi - fastest)^2, continued like the dilution factor. */
function unstretchedSpeed(law: FlameSpeedLaw, phi: number): number {
  const distance = Math.abs(phi - law.fastestPhi);
  const end = Math.sqrt(((1 - PARABOLA_DOWN_TO) * law.peak) / law.curvature);
  if (distance <= end) return law.peak - law.curvature * distance * distance;
  const value = PARABOLA_DOWN_TO * law.peak;
  return value * Math.exp(((-2 * law.curvature * end) / value) * (distance - end));
}

/**
 * Laminar flame speed.
 *
 *   S = (B_m - B_2 (phi - phi_m)^2) (T / 298 K)^alpha (p / 1 atm)^beta (1 - 2.06 x^0.77)
 *
 * @param law                - of the fuel
 * @param temperature        - of the unburned gas [K]
 * @param pressure           - [Pa]
 * @param lambda             - air/fuel ratio over stoichiometric [-]
 * @param burnedMoleFraction - diluent in the unburned gas [-]
 * @returns [m/s], always positive
 *
 * Valid: 298-700 K, 0.4-50 atm, phi 0.7-1.4, within 10 %. Outside, the powers are extrapolated, alpha and beta hold their end values,
 * and the two polynomials go over into exponentials (see `dilutionFactor`). Only ratios of speeds enter the model.
 * Source: Metghalchi & Keck, Combust. Flame 48:191, 1982; Rhodes & Keck, SAE 850047, 1985.
 */
export function laminarFlameSpeed(
  law: FlameSpeedLaw,
  temperature: number,
  pressure: number,
  lambda: number,
  burnedMoleFraction: number,
): number {
  const phi = 1 / lambda;
  const fitted = Math.min(Math.max(phi, LEANEST_FITTED), RICHEST_FITTED);
  const t = law.temperatureExponent;
  const p = law.pressureExponent;
  const alpha = t[0] + t[1] * fitted ** t[2];
  const beta = p[0] + p[1] * fitted ** p[2];
  return (
    unstretchedSpeed(law, phi) *
    (temperature / REFERENCE_TEMPERATURE) ** alpha *
    (pressure / atm) ** beta *
    dilutionFactor(burnedMoleFraction)
  );
}
