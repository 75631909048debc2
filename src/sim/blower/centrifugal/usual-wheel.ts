import type { Impeller } from '../../engine.ts';
import { deg } from '../../units.ts';

/** Inlet volume flow at best efficiency over tip speed times the square of the tip diameter [-]. Typical: 0.07 to 0.09. */
export const USUAL_FLOW_COEFFICIENT = 0.08;

/**
 * A wheel of 50 to 100 mm without a measured map: what a design has where it says nothing else. Typical.
 *
 * Source: Casey & Robinson, J. Turbomach. 135, 2013, for the shape of the line; the rest as the design's fields say.
 */
export const USUAL_WHEEL = {
  blades: 12,
  backsweep: 30 * deg,
  efficiency: 0.72,
  efficiencyAtHalf: 0.9,
  flowWithoutHead: 1.6,
  workFactor: 1.03,
} as const satisfies Partial<Impeller>;

/** Of the passages at the exit: in proportion to the tip diameter, in its unit. Typical. */
export const usualExitWidth = (tipDiameter: number): number => 0.08 * tipDiameter;

/** Of the inducer, between the blades where they are nearest: an eye of 0.6 of the tip diameter, six tenths of it open. Typical. */
export const usualThroatArea = (tipDiameter: number): number => 0.17 * tipDiameter ** 2;

/** What a turn of a wheel carries at best flow: V = phi U D^2 with U = pi D n [m^3]. */
export const volumeOfTurn = (flowCoefficient: number, tipDiameter: number): number =>
  Math.PI * flowCoefficient * tipDiameter ** 3;
