import type { Tolerances } from './dimensions.ts';
import type { FitKind } from './fit-check.ts';

/** How many departures of each sort add up between the two parts of a check; none moves a clearance by more than itself. */
const COUNTS: Readonly<Record<FitKind, Partial<Record<keyof Tolerances, number>>>> = {
  // Throw, knuckle pin, rod; crown; deck and squish band.
  crowns: { centres: 3, outlines: 1, heights: 2, play: 1 },
  covers: { centres: 3, outlines: 1, heights: 2, play: 1 },
  // One throw; knuckle pin and rod twice.
  skirts: { centres: 5, outlines: 2, play: 2 },
  rodsInSkirts: { centres: 1, outlines: 2, play: 1 },
  rodsAtMouths: { centres: 3, outlines: 1, castings: 1, heights: 1, play: 1 },
  rods: { centres: 3, outlines: 2, play: 2 },
  bigEnds: { centres: 3, outlines: 1, castings: 1, heights: 1, play: 1 },
  eyes: { centres: 2, outlines: 2 },
  knuckleWalls: { centres: 1, outlines: 1 },
  smallEnds: { centres: 1, outlines: 2, play: 1 },
  flanges: { heights: 2, castings: 2 },
  fins: { heights: 2, castings: 2 },
  mouths: { heights: 2, castings: 2 },
  rows: { along: 3 },
  diameter: { heights: 2, castings: 2 },
  length: { along: 2, castings: 2 },
};

/**
 * How far a clearance may be out with every dimension between the two parts at its limit the wrong way [m].
 *
 *   t = sum of count_i t_i
 *
 * Source: worst-case stack of tolerances, usual practice in drawing offices. Departures that are independent add up by the
 * root of their squares, which is less; nothing is taken off for that.
 */
export function toleranceStack(kind: FitKind, tolerances: Tolerances): number {
  let sum = 0;
  for (const [name, count] of Object.entries(COUNTS[kind]))
    sum += count * tolerances[name as keyof Tolerances];
  return sum;
}
