import { TURN } from '../units.ts';
import type { EngineGeometry } from './cylinder-geometry.ts';

/**
 * Volume below all pistons that the crank moves, from where every piston stands half way down its stroke:
 *
 *   V(theta) - V_mid = A sum_j ( s_j / 2 - x_j(theta) )      A: bore area [m^2], s_j: stroke, x_j: travel below top dead centre [m]
 *
 * With lambda = r/L a plain rod has x = r (1 - cos) + harmonics 2, 4, 6 ... of amplitudes r lambda/4, r lambda^3/64, r lambda^5/512 ...
 * N evenly spaced plain rods on one pin leave only those that N divides, N times over. So one cylinder pumps its whole swept volume;
 * of two opposed ones the second harmonic is left, lambda/2 of one cylinder's; of three the sixth, four the fourth, five the tenth: below a
 * thousandth. Articulated rods are not alike but for their angle: they leave some percent of the swept volume of all.
 *
 * Source: expansion of the slider-crank in harmonics, Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 2, 1985, ch. 8.
 */
export function undersideVolume({ cylinders, boreArea }: EngineGeometry, theta: number): number {
  let height = 0;
  for (const { travel, stroke } of cylinders) {
    travel.evaluate(theta);
    height += stroke / 2 - travel.value;
  }
  return boreArea * height;
}

/** Least and greatest of it over a turn [m^3], at 720 angles. */
export function undersideSwing(geometry: EngineGeometry): {
  readonly least: number;
  readonly greatest: number;
} {
  const ANGLES = 720;
  let least = Infinity;
  let greatest = -Infinity;
  for (let i = 0; i < ANGLES; i++) {
    const volume = undersideVolume(geometry, (TURN * i) / ANGLES);
    least = Math.min(least, volume);
    greatest = Math.max(greatest, volume);
  }
  return { least, greatest };
}
