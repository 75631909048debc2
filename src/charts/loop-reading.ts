import type { Cursor } from './chart-types.ts';
import { nearestIndex } from './read-at.ts';
import type { Scrub } from './scrub.ts';

/** Points of a loop, by index; -1 where there is none. */
export interface LoopReading {
  /** The cursor's. */
  readonly now: number;
  /** The one that is read: under the pointer, else the cursor's. */
  readonly index: number;
  /** Where that is, in words. */
  readonly place: string;
}

/**
 * @param along   - what runs along the loop and the cursor moves, such as the crank angle; rising
 * @param hovered - index of the point under the pointer
 */
export function readLoop(along: ArrayLike<number>, cursor: Cursor, hovered: number | null): LoopReading {
  const now = nearestIndex(along, cursor.value);
  const value = hovered === null ? cursor.value : (along[hovered] ?? NaN);
  return { now, index: hovered ?? now, place: `at ${cursor.format(value)}` };
}

/**
 * Reads the point under the pointer; pressed, it takes the cursor there.
 *
 * @param nearest - index of the point drawn nearest to a place [px]; -1 when there is none
 */
export const loopScrub = (
  along: ArrayLike<number>,
  cursor: Cursor,
  nearest: (x_px: number, y_px: number) => number,
  onhover: (index: number | null) => void,
): Scrub => ({
  valueAt: nearest,
  onhover: (index) => onhover(index === -1 ? null : index),
  onmove: (index) => {
    onhover(null);
    if (index !== -1) cursor.onmove(along[index]!);
  },
});
