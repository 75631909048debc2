import type { Engine } from '../engine.ts';

/**
 * Open area of a butterfly: a thin elliptical plate on a round shaft, seen along the bore.
 *
 *   k = cos psi / cos psi0                       the plate's projected half-width over the bore's radius
 *   4 A / (pi D^2) = 1 - k + (2/pi) ( k asin(a/k) + a sqrt(1 - a^2/k^2) - asin a - a sqrt(1 - a^2) )      k > a
 *                  = 1 - (2/pi) (asin a + a sqrt(1 - a^2))                          where the shaft hides the plate
 *
 * @param bore        - D [m]
 * @param shaftRatio  - a, shaft over bore, 0 <= a < 1 [-]
 * @param closedAngle - psi0, plate from the plane across the bore when closed, 0 <= psi0 < pi/2 [rad]
 * @param angle       - psi, psi0 <= psi <= pi/2 [rad]
 * @returns area projected along the bore [m^2]
 *
 * Valid: thin plate; exact projection (bore less the union of ellipse and shaft). Where the two branches meet, value and slope are
 * continuous. The form often printed has the arcsines with the other signs: it agrees within 0.5 % to 60 degrees, is 1.6 % short
 * at 75, and falls before the shaft hides the plate, with a jump there.
 * Source: plane geometry; idea and range after Harrington & Bolt, SAE 700082, 1970, and Heywood 1988, eq. 7.18.
 */
export function butterflyArea(bore: number, shaftRatio: number, closedAngle: number, angle: number): number {
  const boreArea = (Math.PI / 4) * bore * bore;
  const a = shaftRatio;
  const k = Math.cos(angle) / Math.cos(closedAngle);
  const shaft = Math.asin(a) + a * Math.sqrt(1 - a * a);
  if (k <= a) return boreArea * (1 - (2 / Math.PI) * shaft);
  const shadow = a / k; // of the shaft, in half-widths of the plate
  const shared = k * Math.asin(shadow) + a * Math.sqrt(1 - shadow * shadow);
  return boreArea * (1 - k + (2 / Math.PI) * (shared - shaft));
}

/**
 * Open area of a flat-edged slide across a round bore: a circular segment.
 *
 *   A = R^2 ( acos(1 - h/R) - (1 - h/R) sqrt(2 h/R - (h/R)^2) ),  R = bore / 2
 *
 * @param bore - [m]
 * @param lift - h, 0 <= h <= bore [m]
 * @returns [m^2]
 */
export function slideArea(bore: number, lift: number): number {
  const R = bore / 2;
  const x = 1 - lift / R;
  return R * R * (Math.acos(x) - x * Math.sqrt(1 - x * x));
}

/**
 * Open area of an engine's throttle at a share of its travel, leakage of the closed throttle included.
 *
 *   A = A_geo + leakShare A_bore (1 - A_geo / A_open):  the leak fades as the throttle opens, so that full is A_open
 *
 * @param throttle - kind and dimensions, see Engine
 * @param opening  - share of the travel of plate or slide, 0 closed .. 1 open [-]
 * @returns [m^2]
 */
export function throttleArea(throttle: Engine['intake']['throttle'], opening: number): number {
  const { kind, bore, shaftRatio, closedAngle, leakShare } = throttle;
  const at = (share: number) =>
    kind === 'slide'
      ? slideArea(bore, share * bore)
      : butterflyArea(bore, shaftRatio, closedAngle, closedAngle + share * (Math.PI / 2 - closedAngle));
  const geometric = at(opening);
  return geometric + leakShare * (Math.PI / 4) * bore * bore * (1 - geometric / at(1));
}
