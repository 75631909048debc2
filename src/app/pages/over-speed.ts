import type { PointResult, SolvedPoint } from '../../sim/index.ts';
import { rpm } from '../../sim/units.ts';

/** One figure over the points of a range; a point without an answer, or without the figure, is a gap. */
export const overSpeed = (
  points: readonly PointResult[],
  pick: (point: SolvedPoint) => number | null,
): number[] => points.map((point) => (point.converged ? (pick(point) ?? NaN) : NaN));

export const speeds_rpm = (points: readonly PointResult[]): number[] =>
  points.map((point) => point.speed / rpm);
