import { minimize } from '../numerics/minimize.ts';

/** Two equal barrels of different rows. */
export interface CrossedBarrels {
  /** Between their axes [rad]. */
  readonly angle: number;
  /** Between their rows, along the crank [m]. */
  readonly apart: number;
  /** Above the crank axis, from where they reach outwards [m]. */
  readonly from: number;
}

/**
 * Least gap of two equal round barrels of different rows, as fins or mouths are. Exact; negative by how far they overlap.
 *
 * A half turn about the line midway between the rows, along the bisector of the two axes, carries one onto the other.
 * Both are convex, so their nearest points are such a pair, and
 *
 *   gap = 2 d,   d = signed distance of the origin from the ellipse about (h sin(phi/2), s/2) with
 *                half axes R cos(phi/2) and R: the barrel's lower end, seen along that line
 *
 * Limits: s = 0 gives 2 (h sin(phi/2) - R cos(phi/2)), barrels of one row; phi = 0 gives s - 2 R.
 *
 * Valid: equal heights. With different ones take the lower: the true gap is then no less.
 */
export function roundBarrelGap({ angle, apart, from }: CrossedBarrels, diameter: number): number {
  const radius = diameter / 2;
  return (
    2 * ellipseDistance(from * Math.sin(angle / 2), apart / 2, radius * Math.abs(Math.cos(angle / 2)), radius)
  );
}

/** The same for barrels that are rectangles seen along their axes, as flanges are: `across` the row and `along` the crank [m]. */
export function squareBarrelGap(
  { angle, apart, from }: CrossedBarrels,
  across: number,
  along: number,
): number {
  const aside = from * Math.sin(angle / 2) - (across / 2) * Math.abs(Math.cos(angle / 2));
  const behind = (apart - along) / 2;
  return 2 * (aside > 0 && behind > 0 ? Math.hypot(aside, behind) : Math.max(aside, behind));
}

/** Signed distance of the origin from an ellipse about (x, y) in the first quadrant, half axes a and b along x and y. */
function ellipseDistance(x: number, y: number, a: number, b: number): number {
  const distance = (t: number): number => Math.hypot(x - a * Math.cos(t), y - b * Math.sin(t));
  const ends = Math.min(distance(0), distance(Math.PI / 2));
  const least = Math.min(ends, minimize(distance, 0, Math.PI / 2, 1e-9).value);
  const outside = a > 0 ? (x / a) ** 2 + (y / b) ** 2 >= 1 : x > 0 || y >= b;
  return outside ? least : -least;
}
