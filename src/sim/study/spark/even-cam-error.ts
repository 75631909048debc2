import type { CylinderGeometry } from '../../geometry/cylinder-geometry.ts';
import { aboutZero } from '../../geometry/angles.ts';

/**
 * By how much an evenly spaced cam fires a cylinder early (+) or late (-) of its own dead centre, from -pi to pi [rad].
 *
 *   error = top dead centre - crank pin's pass by the axis        0 with plain rods
 */
export const evenCamError = ({ tdc, pinPasses }: Pick<CylinderGeometry, 'tdc' | 'pinPasses'>): number =>
  aboutZero(tdc - pinPasses);
