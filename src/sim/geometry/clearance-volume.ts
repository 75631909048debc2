import type { CylinderDimensions } from '../engine.ts';

/**
 * Clearance volume of a master cylinder without barrel offset or port trim, from its compression ratio.
 *
 *   full stroke:      Vc = A S / (CR - 1)
 *   exhaust closing:  Vc = A x_ec / (CR - 1),   x_ec = exhaust top edge - deck clearance
 *
 * @param cylinder        - ratio, and what it is counted from
 * @param boreArea        - A [m^2]
 * @param stroke          - S of the master [m]
 * @param exhaustTopDepth - highest exhaust edge below the deck, untrimmed [m]
 * @returns [m^3]; not positive if the exhaust edge stands above the crown's top dead centre
 */
export function masterClearanceVolume(
  cylinder: CylinderDimensions,
  boreArea: number,
  stroke: number,
  exhaustTopDepth: number,
): number {
  const travel =
    cylinder.compressionRatioFrom === 'full stroke' ? stroke : exhaustTopDepth - cylinder.deckClearance;
  return (boreArea * travel) / (cylinder.compressionRatio - 1);
}
