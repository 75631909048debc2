import { orificeMassFlow } from './orifice.ts';
import { AIR } from '../gas/air.ts';
import { heatRatio, specificHeat } from '../gas/polynomial.ts';
import { findRoot } from '../numerics/find-root.ts';
import { mbar } from '../units.ts';

/** A fixed venturi with one main jet, no air bleed. */
export interface Venturi {
  /** Least diameter of the venturi, and discharge coefficient for air [m], [-]. */
  readonly bore: number;
  readonly airDischarge: number;
  /** Diameter of the jet, and its discharge coefficient [m], [-]. */
  readonly jet: number;
  readonly jetDischarge: number;
  /** By which the nozzle's mouth stands above the fuel in the bowl [m]. */
  readonly lift: number;
  /** Of the liquid fuel [kg/m^3]. */
  readonly fuelDensity: number;
}

/** Air before the venturi, at rest [Pa], [K]. */
export interface Before {
  readonly pressure: number;
  readonly temperature: number;
}

/** Usual coefficients of a smooth venturi and of a short jet. Source: Taylor, see `fuelThroughJet`. */
export const USUAL_AIR_DISCHARGE = 0.9;
export const USUAL_JET_DISCHARGE = 0.75;
/** Usual height of the nozzle's mouth above the fuel in the bowl [m]. Typical. */
export const USUAL_LIFT = 5e-3;
/** Usual diameter of a venturi over the bore of its throttle [-]. Typical: 0.8 to 0.9. */
export const USUAL_VENTURI = 0.85;
/** Depression for which a venturi is usually chosen [Pa]. Typical: enough to draw and atomise, little loss. */
export const USUAL_DEPRESSION = 20 * mbar;
const GRAVITY = 9.80665;

const circle = (diameter: number): number => (Math.PI / 4) * diameter * diameter;

/** Pressure in the throat at which it chokes [Pa]. */
export function criticalPressure({ pressure, temperature }: Before): number {
  const gamma = heatRatio(AIR, temperature);
  return pressure * (2 / (gamma + 1)) ** (gamma / (gamma - 1));
}

/** Share of what chokes the throat that counts as choked: the slope is nothing there [-]. */
const CHOKED = 1 - 1e-9;

/**
 * Depression in the throat of a venturi that draws an air flow [Pa].
 *
 *   mdot_a = Cd A p_0 / sqrt(R T_0) sqrt( 2g/(g-1) (r^(2/g) - r^((g+1)/g)) ),   r = p/p_0,   depression = p_0 - p
 *
 * @param airFlow - mean, >= 0 [kg/s]
 * @returns null where the throat is choked before it passes so much
 *
 * Valid: steady flow. One carburettor on several cylinders sees little pulsation behind a blower; a single-cylinder one more.
 * Source: Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 7.10 with C.8.
 */
export function venturiDepression(
  airFlow: number,
  { bore, airDischarge }: Venturi,
  before: Before,
): number | null {
  const gamma = heatRatio(AIR, before.temperature);
  const through = (p: number) =>
    orificeMassFlow(
      airDischarge * circle(bore),
      before.pressure,
      before.temperature,
      p,
      gamma,
      AIR.gasConstant,
    );
  const critical = criticalPressure(before);
  if (airFlow >= CHOKED * through(critical)) return null;
  if (airFlow <= 0) return 0;
  return before.pressure - findRoot((p) => through(p) - airFlow, critical, before.pressure, 1e-3);
}

/** Speed of the air in the throat [m/s]: isentropic from rest, sqrt(2 cp T_0 (1 - r^((g-1)/g))); 0 where nothing draws. */
export function throatSpeed(depression: number, { pressure, temperature }: Before): number {
  const cp = specificHeat(AIR, temperature);
  const ratio = Math.min(1, Math.max(0, 1 - depression / pressure));
  return Math.sqrt(2 * cp * temperature * (1 - ratio ** (AIR.gasConstant / cp)));
}

/**
 * Fuel that a depression draws through the main jet [kg/s].
 *
 *   mdot_f = Cd_j A_j sqrt( 2 rho_f (depression - rho_f g h) ),   none below rho_f g h
 *
 * Valid: turbulent flow, a bowl at the pressure before the venturi; below some 0.1 bar of pressure behind it viscosity makes Cd_j
 * fall. No air bleed, no needle: those flatten the mixture that this law makes richer with flow.
 * Source: Heywood, eq. 7.11; Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 2, 1985, ch. 5.
 */
export function fuelThroughJet(
  depression: number,
  { jet, jetDischarge, lift, fuelDensity }: Venturi,
): number {
  const head = depression - fuelDensity * GRAVITY * lift;
  return head > 0 ? jetDischarge * circle(jet) * Math.sqrt(2 * fuelDensity * head) : 0;
}

/** Air over stoichiometric air that a venturi with its jet gives at an air flow [-]; null where no fuel comes, or it is choked. */
export function jetLambda(
  airFlow: number,
  venturi: Venturi,
  before: Before,
  stoichiometric: number,
): number | null {
  const depression = venturiDepression(airFlow, venturi, before);
  const fuel = depression === null ? 0 : fuelThroughJet(depression, venturi);
  return fuel > 0 ? airFlow / fuel / stoichiometric : null;
}

/**
 * Diameter of the jet that gives a wanted mixture at an air flow [m]; null where the venturi draws no fuel, or is choked.
 *
 *   A_j = mdot_a / (lambda s) / (Cd_j sqrt(2 rho_f (depression - rho_f g h)))
 */
export function jetFor(
  lambda: number,
  airFlow: number,
  venturi: Venturi,
  before: Before,
  stoichiometric: number,
): number | null {
  const depression = venturiDepression(airFlow, venturi, before);
  if (depression === null) return null;
  const unit = fuelThroughJet(depression, { ...venturi, jet: Math.sqrt(4 / Math.PI) });
  return unit > 0 ? Math.sqrt(((4 / Math.PI) * airFlow) / (lambda * stoichiometric * unit)) : null;
}

/**
 * Bore of the venturi that makes a wanted depression at an air flow [m]: a larger one costs less air, a smaller one atomises better.
 *
 * @param depression - above 0, below choking [Pa]; null beyond
 */
export function boreFor(
  depression: number,
  airFlow: number,
  airDischarge: number,
  { pressure, temperature }: Before,
): number | null {
  const gamma = heatRatio(AIR, temperature);
  const critical = (2 / (gamma + 1)) ** (gamma / (gamma - 1));
  const back = pressure - depression;
  if (!(depression > 0) || back <= critical * pressure) return null;
  const flux = orificeMassFlow(airDischarge, pressure, temperature, back, gamma, AIR.gasConstant);
  return Math.sqrt(((4 / Math.PI) * airFlow) / flux);
}
