import type { OperatingPoint } from '../sim/index.ts';
import { coarseFirst } from './coarse-first.ts';

export interface PlannedPoint {
  /** In the list that was asked for. */
  readonly index: number;
  /** The point whose solution it starts from, earlier in the plan; null for the cold start. */
  readonly from: number | null;
}

/** Farthest apart, as a ratio of speeds, that a start from the other is cheaper than a cold one. */
const FARTHEST = 1.5;

/**
 * In what order a range is worked out, and what each point starts from: both ends first, then the middles of the gaps, each
 * from the nearest in speed of those before it that has the same throttle. A matter of the list alone: neither the number of workers nor which
 * of them is done first shows in the figures.
 */
export function sweepPlan(points: readonly OperatingPoint[]): PlannedPoint[] {
  const order = coarseFirst(points.length);
  return order.map((index, place) => {
    const { speed, throttle } = points[index]!;
    let from: number | null = null;
    let nearest = FARTHEST;
    for (const other of order.slice(0, place)) {
      const there = points[other]!;
      const apart = Math.max(speed / there.speed, there.speed / speed);
      if (there.throttle !== throttle || !(apart < nearest)) continue;
      nearest = apart;
      from = other;
    }
    return { index, from };
  });
}
