import { intervalOf } from '../../numerics/interpolate.ts';
import { TURN } from '../../units.ts';

/** Equal parts of a turn at which work is held: a whole number for each of 3, 5, 7, 9 or 14 cylinders. */
export const PARTS = 1260;

/**
 * Work since the period began at equally spaced crank angles, ends included: turns x PARTS + 1 of them [J].
 * Differences of it are means of torque that lose nothing, whatever mesh the work was known on.
 */
export type WorkCurve = Float64Array;

/** Angle of a part's end [rad]. */
export const angleOfPart = (part: number): number => (part * TURN) / PARTS;

/**
 * Work on equal parts, from work and torque on any mesh: cubic Hermite between its points.
 *
 * @param angle  - rising from 0 to turns x 2 pi [rad]
 * @param work   - there [J]; @param torque - its slope there [N m]
 *
 * Numerics: exact at the points of the mesh; both ends are among them.
 */
export function onEqualParts(
  angle: Float64Array,
  work: Float64Array,
  torque: Float64Array,
  turns: number,
): WorkCurve {
  const end = angle[angle.length - 1]!;
  return Float64Array.from({ length: turns * PARTS + 1 }, (_, part) => {
    const x = part === turns * PARTS ? end : angleOfPart(part);
    const i = intervalOf(angle, x);
    const span = angle[i + 1]! - angle[i]!;
    const t = (x - angle[i]!) / span;
    const rise = work[i + 1]! - work[i]!;
    const a = span * (torque[i]! + torque[i + 1]!) - 2 * rise;
    const b = rise - span * torque[i]! - a;
    return work[i]! + t * (span * torque[i]! + t * (b + t * a));
  });
}

/** Mean over the whole curve of the torque that does this work [N m]. */
export const meanTorque = (work: WorkCurve): number =>
  (work[work.length - 1]! - work[0]!) / angleOfPart(work.length - 1);

/** Means of the torque over each part [N m]. */
export const torqueOfParts = (work: WorkCurve): Float64Array =>
  Float64Array.from(
    { length: work.length - 1 },
    (_, part) => (work[part + 1]! - work[part]!) / angleOfPart(1),
  );
