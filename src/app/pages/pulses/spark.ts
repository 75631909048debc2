import type { CylinderGeometry } from '../../../sim/geometry/cylinder-geometry.ts';
import type { Mark } from '../../../charts/chart-types.ts';
import type { SparkPoint, SparkStudy } from '../../../sim/study/spark/spark-study.ts';
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

/** Room that two words beside each other need [°]. */
const WORD_deg = 12;

/** The design's advance and that of most torque; one word for both where they would stand on each other. */
export function sparkMarks({ now, best }: Pick<SparkStudy, 'now' | 'best'>): readonly Mark[] {
  const mark = (angle: number, label: string): Mark => ({ x: angle / deg, label, colour: 'var(--ink)' });
  if (best === null) return [mark(now, 'design')];
  const apart = Math.abs(best.advance - now) / deg > WORD_deg;
  return [
    mark(now, apart ? 'design' : ''),
    mark(best.advance, apart ? 'most torque' : 'most torque; design beside it'),
  ];
}
