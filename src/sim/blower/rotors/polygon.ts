import type { Spot } from './profile.ts';

export interface PolygonMeasures {
  /** [m^2], positive anticlockwise. */
  readonly area: number;
  /** Integral of the squared distance from the origin over the area [m^4]. */
  readonly polarMoment: number;
  /** [m] */
  readonly perimeter: number;
}

/**
 * Area, polar moment about the origin and perimeter of a closed polygon, exact.
 *
 *   A = 1/2 sum c,   I = 1/12 sum c (|a|^2 + a.b + |b|^2),   c = a x b       over the sides a to b
 *
 * Source: Green's theorem over each triangle of the origin and a side.
 */
export function measurePolygon(corners: readonly Spot[]): PolygonMeasures {
  let [area, polarMoment, perimeter] = [0, 0, 0];
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const cross = a.x * b.y - b.x * a.y;
    area += cross / 2;
    polarMoment += (cross * (a.x * a.x + a.y * a.y + a.x * b.x + a.y * b.y + b.x * b.x + b.y * b.y)) / 12;
    perimeter += Math.hypot(b.x - a.x, b.y - a.y);
  });
  return { area, polarMoment, perimeter };
}
