import type { Point } from '../geometry/rod-points.ts';
import { nearestShare } from './gap.ts';
import type { RoundedShape } from './rounded-shape.ts';

/**
 * Where two outlines are nearest: a point of each, or, where they overlap, the middle of what they share, twice. For marking.
 */
export function contactPoints(a: RoundedShape, b: RoundedShape, gap: number): { a: Point; b: Point } {
  if (gap <= -a.radius - b.radius && a.x.length > 2 && b.x.length > 2) {
    const middle = middleOfOverlap(a, b);
    return { a: middle, b: middle };
  }
  const near = nearestCores(a, b);
  const dx = near.b.x - near.a.x;
  const dy = near.b.y - near.a.y;
  const apart = Math.hypot(dx, dy) || 1;
  const along = (from: Point, by: number): Point => ({
    x: from.x + (dx / apart) * by,
    y: from.y + (dy / apart) * by,
  });
  return { a: along(near.a, a.radius), b: along(near.b, -b.radius) };
}

function nearestCores(a: RoundedShape, b: RoundedShape): { a: Point; b: Point } {
  let least = Infinity;
  let found = { a: corner(a, 0), b: corner(b, 0) };
  const look = (corners: RoundedShape, sides: RoundedShape, swap: boolean): void => {
    for (let k = 0; k < corners.x.length; k++) {
      const from = corner(corners, k);
      for (let i = 0; i < sides.x.length; i++) {
        const s = corner(sides, i);
        const e = corner(sides, (i + 1) % sides.x.length);
        const t = nearestShare(from.x, from.y, s.x, s.y, e.x, e.y);
        const to = { x: s.x + t * (e.x - s.x), y: s.y + t * (e.y - s.y) };
        const distance = (to.x - from.x) ** 2 + (to.y - from.y) ** 2;
        if (distance >= least) continue;
        least = distance;
        found = swap ? { a: to, b: from } : { a: from, b: to };
      }
    }
  };
  look(a, b, false);
  look(b, a, true);
  return found;
}

/** Mean of the corners of one that lie in the other, and of the crossings of their sides. */
function middleOfOverlap(a: RoundedShape, b: RoundedShape): Point {
  const shared = [
    ...corners(a).filter((point) => inside(point, b)),
    ...corners(b).filter((point) => inside(point, a)),
    ...crossings(a, b),
  ];
  if (shared.length === 0) return corner(a, 0);
  return {
    x: shared.reduce((sum, { x }) => sum + x, 0) / shared.length,
    y: shared.reduce((sum, { y }) => sum + y, 0) / shared.length,
  };
}

const corner = ({ x, y }: RoundedShape, i: number): Point => ({ x: x[i]!, y: y[i]! });
const corners = (shape: RoundedShape): Point[] => Array.from(shape.x, (_, i) => corner(shape, i));

function inside(point: Point, shape: RoundedShape): boolean {
  return corners(shape).every((from, i, all) => {
    const to = all[(i + 1) % all.length]!;
    return (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x) >= 0;
  });
}

function crossings(a: RoundedShape, b: RoundedShape): Point[] {
  const found: Point[] = [];
  const [ofA, ofB] = [corners(a), corners(b)];
  ofA.forEach((p, i) => {
    const q = ofA[(i + 1) % ofA.length]!;
    ofB.forEach((r, j) => {
      const s = ofB[(j + 1) % ofB.length]!;
      const cross = (q.x - p.x) * (s.y - r.y) - (q.y - p.y) * (s.x - r.x);
      const t = ((r.x - p.x) * (s.y - r.y) - (r.y - p.y) * (s.x - r.x)) / cross;
      const u = ((r.x - p.x) * (q.y - p.y) - (r.y - p.y) * (q.x - p.x)) / cross;
      if (t >= 0 && t <= 1 && u >= 0 && u <= 1)
        found.push({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
    });
  });
  return found;
}
