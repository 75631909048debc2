import { kmPerHour, mm } from '../units.ts';

/** Straight fins of one kind. */
export interface Fins {
  /** From root to tip, mean thickness, gap between two [m]. */
  readonly height: number;
  readonly thickness: number;
  readonly space: number;
  /** Of the metal [W/(m K)]. */
  readonly conductivity: number;
}

/**
 * Fin efficiency: heat given by a straight fin over that of a fin wholly at root temperature, its tip insulated.
 *
 *   eta = tanh(m L) / (m L),   m = sqrt(2 q / (k t))
 *
 * @param mL - [-]
 * @returns 1 for a short or perfectly conducting fin, 1/(m L) for a long one [-]
 *
 * Source: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 2002, sec. 3.6.
 */
export const finEfficiency = (mL: number): number => (mL < 1e-4 ? 1 - (mL * mL) / 3 : Math.tanh(mL) / mL);

/** Of Gibson's law below, in mm and km/h: its factor, what it begins with, and what the depth takes away. */
const [FACTOR, SHALLOW, BY_DEPTH] = [241.7, 0.0247, 0.00148];
/** Depth from which the law gives nothing, 16.7; points that reach it say so. */
export const DEEPEST_FINS = SHALLOW / BY_DEPTH;

/** Height^0.8 over space^0.4, in mm: how deep and narrow the air's way between two fins is. */
export const finDepth = ({ height, space }: Pick<Fins, 'height' | 'space'>): number =>
  (height / mm) ** 0.8 / (space / mm) ** 0.4;

/**
 * Coefficient between the fins of a cylinder and a free stream of air across it.
 *
 *   q = 241.7 (0.0247 - 0.00148 h^0.8 / p^0.4) u^0.73        h height, p space [mm], u [km/h]
 *
 * @param fins  - see Fins
 * @param speed - of the stream, undisturbed [m/s]
 * @returns [W/(m^2 K)]; 60, 80, 108 at 40, 60, 90 km/h for fins of 20 mm, 6 mm apart
 *
 * Valid: 32-97 km/h, h^0.8/p^0.4 well below 16.7, from which on it is 0; beyond the speeds an extrapolation. No baffles: where the air is led between the
 * fins, take its speed there. Another law in print gives half of it at 60 km/h, so a multiplier belongs beside it.
 * Source: Gibson, Proc. Instn Automobile Engrs 14:243, 1920, in the metric form in use for motorcycle cylinders.
 */
export const finAirCoefficient = (fins: Pick<Fins, 'height' | 'space'>, speed: number): number =>
  FACTOR * Math.max(0, SHALLOW - BY_DEPTH * finDepth(fins)) * (speed / kmPerHour) ** 0.73;

/**
 * Forced and natural convection side by side.
 *
 *   q = (q_forced^3 + q_still^3)^(1/3)
 *
 * Source: Incropera & DeWitt 2002, sec. 9.9, exponent 3.
 */
export const mixedCoefficient = (forced: number, still: number): number =>
  Math.cbrt(forced ** 3 + still ** 3);

/**
 * Overall coefficient of a finned surface, on the area of the roots.
 *
 *   U = q / (s + t) [ (2 / a) (1 + w / (2 R)) tanh(a w') + s ],   a = sqrt(2 q / (k t)),   w' = w + t/2
 *
 * @param q          - coefficient at the fins' surface [W/(m^2 K)]
 * @param fins       - w height, t thickness, s space, k conductivity
 * @param rootRadius - R of the cylinder at the fins' root, Infinity for a flat wall [m]
 * @returns [W/(m^2 K)]
 *
 * Valid: circular fins not taller than their root radius; tip rounded off as half a thickness of height.
 * Source: Biermann & Pinkel, NACA TR 488, 1934.
 */
export function finnedCoefficient(q: number, fins: Fins, rootRadius: number): number {
  if (q === 0) return 0;
  const { height, thickness, space, conductivity } = fins;
  const a = Math.sqrt((2 * q) / (conductivity * thickness));
  const long = height + thickness / 2;
  const sides = 2 * long * finEfficiency(a * long) * (1 + height / (2 * rootRadius));
  return (q / (space + thickness)) * (sides + space);
}
