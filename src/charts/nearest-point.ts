import type { Column } from './scales.ts';

type Place = (value: number) => number;

/** Index of the point of a curve that is drawn closest to a place on the page [px]; -1 when there is none. */
export function nearestPoint(
  xs: Column,
  ys: Column,
  x: Place,
  y: Place,
  at: { readonly x: number; readonly y: number },
): number {
  let nearest = -1;
  let least = Infinity;
  for (let i = 0; i < xs.length; i++) {
    const distance = Math.hypot(x(xs[i] ?? NaN) - at.x, y(ys[i] ?? NaN) - at.y);
    if (distance < least) {
      least = distance;
      nearest = i;
    }
  }
  return nearest;
}
