import { deg } from '../../units.ts';
import type { CylinderShare, ShareFigure } from './share-figures.ts';
import { spreadOf } from './spread.ts';

/** What is to become alike. */
export const AIMS = ['timing', 'compression', 'trappedMass'] as const;
export type AimName = (typeof AIMS)[number];

/** How alike the cylinders are to become in one thing, and how much that weighs beside the others; 0 leaves it alone. */
export interface Aim {
  /** Range that is let pass: timing [rad], the others over their mean [-]. */
  readonly tolerance: number;
  readonly weight: number;
}
export type Aims = Readonly<Record<AimName, Aim>>;

/**
 * Unless the builder says otherwise. Opening angles are left alone: with articulated rods a window that opens like the others' shuts
 * unlike them, and the shares get no better.
 */
export const USUAL_AIMS: Aims = {
  timing: { tolerance: 0.2 * deg, weight: 0 },
  compression: { tolerance: 0.02, weight: 1 },
  trappedMass: { tolerance: 0.01, weight: 1 },
};

/** One figure that an aim speaks of. */
export interface AimedFigure {
  readonly aim: AimName;
  readonly figure: Extract<
    ShareFigure,
    'exhaustOpening' | 'transferOpening' | 'trappedCompression' | 'trappedMass'
  >;
  /** Whether its tolerance is a share of the mean. */
  readonly relative: boolean;
}

export const AIMED_FIGURES: readonly AimedFigure[] = [
  { aim: 'timing', figure: 'exhaustOpening', relative: false },
  { aim: 'timing', figure: 'transferOpening', relative: false },
  { aim: 'compression', figure: 'trappedCompression', relative: true },
  { aim: 'trappedMass', figure: 'trappedMass', relative: true },
];

/** Unit in which a figure's deviations are weighed: the tolerance of its aim, in the figure's own unit. */
export const allowedRange = (aims: Aims, { aim, relative }: AimedFigure, mean: number): number =>
  aims[aim].tolerance * (relative ? mean : 1);

/** Range over what is let pass, the largest of all that weighs: up to 1 where all is alike enough. */
export function furthestApart(
  aims: Aims,
  cylinders: readonly Pick<CylinderShare, AimedFigure['figure']>[],
): number {
  const ratios = AIMED_FIGURES.filter(({ aim }) => aims[aim].weight > 0).map((aimed) => {
    const { mean, range } = spreadOf(cylinders.map((each) => each[aimed.figure]));
    return range / allowedRange(aims, aimed, mean);
  });
  return Math.max(0, ...ratios);
}
