import type { RoundedShape } from './rounded-shape.ts';

/**
 * Gap between two convex outlines, exact. Positive: the least distance of any two of their points. Negative: the least shift that
 * would part them, since what overlaps has no distance.
 *
 *   gap = d(0, A - B) - rA - rB
 *
 * d is the signed distance of the origin from the Minkowski difference of the two cores: outside, the least distance of a
 * corner of one from a side of the other; inside, minus the least depth below any side's line.
 *
 * Valid: convex cores, counter-clockwise.
 * Source: Ericson, Real-Time Collision Detection, 2005, secs. 5.1, 5.2 and 9.2.
 */
export function gap(a: RoundedShape, b: RoundedShape): number {
  const apart = Math.max(sideSeparation(a, b), sideSeparation(b, a));
  const core = apart > 0 || apart === -Infinity ? coreDistance(a, b) : apart;
  return core - a.radius - b.radius;
}

/** How far b lies beyond the side of a beyond which it lies furthest; negative where it lies beyond none [m]. */
function sideSeparation(a: RoundedShape, b: RoundedShape): number {
  const n = a.x.length;
  let most = -Infinity;
  if (n < 2) return most;
  for (let i = 0; i < n; i++) {
    const j = i + 1 < n ? i + 1 : 0;
    const dx = a.x[j]! - a.x[i]!;
    const dy = a.y[j]! - a.y[i]!;
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length === 0) continue;
    most = Math.max(most, beyond(b, a.x[i]!, a.y[i]!, dy / length, -dx / length));
    // A bare segment ends in two points: what lies in line with it is apart all the same.
    if (n === 2) most = Math.max(most, beyond(b, a.x[j]!, a.y[j]!, dx / length, dy / length));
  }
  return most;
}

/** Least reach of a core along a unit direction, from a point [m]. */
function beyond({ x, y }: RoundedShape, fromX: number, fromY: number, nx: number, ny: number): number {
  let least = Infinity;
  for (let k = 0; k < x.length; k++) least = Math.min(least, (x[k]! - fromX) * nx + (y[k]! - fromY) * ny);
  return least;
}

/** Least distance of two cores that do not overlap [m]. */
function coreDistance(a: RoundedShape, b: RoundedShape): number {
  return Math.sqrt(Math.min(cornersToSides(a, b), cornersToSides(b, a)));
}

function cornersToSides(corners: RoundedShape, sides: RoundedShape): number {
  let least = Infinity;
  const n = sides.x.length;
  for (let k = 0; k < corners.x.length; k++) {
    const px = corners.x[k]!;
    const py = corners.y[k]!;
    for (let i = 0; i < n; i++) {
      const j = i + 1 < n ? i + 1 : 0;
      const t = nearestShare(px, py, sides.x[i]!, sides.y[i]!, sides.x[j]!, sides.y[j]!);
      const dx = sides.x[i]! + t * (sides.x[j]! - sides.x[i]!) - px;
      const dy = sides.y[i]! + t * (sides.y[j]! - sides.y[i]!) - py;
      least = Math.min(least, dx * dx + dy * dy);
    }
  }
  return least;
}

/** Where on a segment lies what is nearest to a point: 0 at its beginning, 1 at its end. */
export function nearestShare(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const square = dx * dx + dy * dy;
  if (square === 0) return 0;
  return Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / square));
}
