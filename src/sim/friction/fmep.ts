import type { Friction } from '../engine.ts';

type Coefficients = Pick<
  Friction,
  'constant' | 'peakPressureFactor' | 'pistonSpeedFactor' | 'speedSquaredFactor'
>;

/**
 * Friction mean effective pressure.
 *
 *   fmep = a + b p_max + c c_m + d N^2
 *
 * @param friction     - a [Pa], b [-], c [Pa s/m], d [Pa s^2/rad^2]
 * @param peakPressure - p_max, mean over the cylinders [Pa]
 * @param pistonSpeed  - c_m, mean [m/s]
 * @param speed        - N, of the crank [rad/s]
 * @returns [Pa]
 *
 * Valid: warm engine. Starting values for rolling bearings, typical and wide: a 10-15 kPa, b 0.004, c 2-3.2 kPa s/m; a radial adds
 * 2-5 kPa for its knuckle pins. Blair's two-stroke fit with rolling bearings is c = 3150 Pa s/m alone.
 * Source: Chen & Flynn, SAE 650733, 1965 (form); Blair, Design and Simulation of Two-Stroke Engines, 1996, sec. 5.4.
 */
export const fmep = (
  friction: Coefficients,
  peakPressure: number,
  pistonSpeed: number,
  speed: number,
): number =>
  friction.constant +
  friction.peakPressureFactor * peakPressure +
  friction.pistonSpeedFactor * pistonSpeed +
  friction.speedSquaredFactor * speed * speed;
