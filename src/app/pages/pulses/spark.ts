import type { CylinderGeometry } from '../../../sim/geometry/cylinder-geometry.ts';
import type { SparkPoint } from '../../../sim/study/spark/spark-study.ts';
import { evenCamError } from '../../../sim/study/spark/even-cam-error.ts';
import { deg } from '../../../sim/units.ts';

/** How early an evenly spaced cam fires each cylinder [°]. */
export const evenCamEarly = (
  cylinders: readonly Pick<CylinderGeometry, 'tdc' | 'pinPasses'>[],
): readonly number[] => cylinders.map((each) => evenCamError(each) / deg);

/** Highest knock integral of all cylinders at each advance; NaN where nothing burns. */
export const worstIntegrals = (points: readonly SparkPoint[]): readonly number[] =>
  points.map(({ integrals }) => {
    const known = integrals.flatMap((each) => (each === null ? [] : [each]));
    return known.length > 0 ? Math.max(...known) : NaN;
  });
