import { deg } from '../../units.ts';
import { CAUSES } from './evenness.ts';
import type { Cause, Evenness } from './evenness.ts';
import type { ShareFigure } from './share-figures.ts';
import { spreadOf } from './spread.ts';

/** Which cylinder runs hottest, and why. Cylinders by their place row by row from 0; departures over the mean [-]. */
export interface Hottest {
  /** The one whose walls take most heat [W], and by how much more than the mean. */
  readonly cylinder: number;
  readonly wallHeat: number;
  readonly above: number;
  /** Whether all take as much to within half a percent, so that none can be called hottest. */
  readonly alike: boolean;
  /** What makes it so: the cause without which it would come nearest to the mean, and how far off it would then be. */
  readonly cause: Cause | null;
  readonly aboveWithout: number;
  /** What is behind it in that cylinder: departures from the means, of the opening as an angle [rad], of the others over the mean [-]. */
  readonly behind: readonly { readonly figure: Behind; readonly departure: number }[];
  /** Where the hottest exhaust leaves [K], which need not be the same cylinder. */
  readonly exhaust: { readonly cylinder: number; readonly temperature: number };
}
type Behind = Extract<ShareFigure, 'exhaustOpening' | 'trappedMass' | 'trappedCompression'>;

const BEHIND: readonly Behind[] = ['exhaustOpening', 'trappedMass', 'trappedCompression'];
/** Departure within which heat counts as alike, and below which a figure explains nothing [-], [rad]. */
const ALIKE = 5e-3;
const LEAST_ANGLE = 0.5 * deg;

/** Heat into the walls says what a cylinder has to cool away; the exhaust's temperature falls the more work it gave. */
export function hottestOf({ cylinders, without }: Evenness): Hottest {
  const departure = (of: Evenness['cylinders'], figure: ShareFigure, j: number): number => {
    const { mean } = spreadOf(of.map((each) => each[figure]));
    return mean === 0 ? 0 : of[j]![figure] / mean - 1;
  };
  const hottestIn = (figure: ShareFigure) =>
    cylinders.reduce((best, each, j) => (each[figure] > cylinders[best]![figure] ? j : best), 0);
  const cylinder = hottestIn('wallHeat');
  const above = departure(cylinders, 'wallHeat', cylinder);
  const causes = CAUSES.flatMap((cause) => {
    const { cylinders: others } = without[cause];
    return others && others !== cylinders ? [{ cause, left: departure(others, 'wallHeat', cylinder) }] : [];
  });
  const [first] = causes.sort((a, b) => Math.abs(a.left) - Math.abs(b.left));
  const cause = first && Math.abs(first.left) < Math.abs(above) ? first.cause : null;
  const exhaust = hottestIn('exhaustTemperature');
  return {
    cylinder,
    wallHeat: cylinders[cylinder]!.wallHeat,
    above,
    alike: above < ALIKE,
    cause,
    aboveWithout: cause ? first!.left : above,
    behind: BEHIND.flatMap((figure) => {
      const isAngle = figure === 'exhaustOpening';
      const { mean } = spreadOf(cylinders.map((each) => each[figure]));
      const off = isAngle ? cylinders[cylinder]![figure] - mean : departure(cylinders, figure, cylinder);
      return off > (isAngle ? LEAST_ANGLE : ALIKE) ? [{ figure, departure: off }] : [];
    }),
    exhaust: { cylinder: exhaust, temperature: cylinders[exhaust]!.exhaustTemperature },
  };
}
