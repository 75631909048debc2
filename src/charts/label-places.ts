import type { Room } from './chart-types.ts';
import { spreadLabels } from './spread-labels.ts';

/** A label where it belongs on the page [px]. */
export interface WantedLabel {
  readonly label: string;
  readonly colour: string;
  readonly x: number;
  readonly y: number;
}

export interface PlacedLabel extends WantedLabel {
  readonly anchor: 'start' | 'middle' | 'end';
}

/** So near to an edge a label in the middle of its place may run over it [px]. */
const EDGE = 60;

/**
 * Labels of curves, above each other by at least `gap` [px] and aligned so that they stay in the room; without those
 * that belong nowhere.
 */
export function labelPlaces(
  wanted: readonly WantedLabel[],
  gap: number,
  { left, right, top, bottom }: Room,
): PlacedLabel[] {
  const there = wanted.filter(({ x, y }) => Number.isFinite(x) && Number.isFinite(y));
  const heights = spreadLabels(
    there.map(({ y }) => y),
    gap,
    top - 4,
    bottom - 8,
  );
  return there.map((label, i) => ({
    ...label,
    y: heights[i]!,
    anchor: label.x > right - EDGE ? 'end' : label.x < left + EDGE ? 'start' : 'middle',
  }));
}
