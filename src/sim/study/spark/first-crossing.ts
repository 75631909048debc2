/**
 * Where values first rise past a level, on a straight line between the points: the first x where they begin above it, Infinity where
 * they never do.
 */
export function firstCrossing(xs: readonly number[], ys: readonly number[], level: number): number {
  const after = ys.findIndex((y) => y > level);
  if (after < 0) return Infinity;
  if (after === 0) return xs[0]!;
  const [x, y] = [xs[after - 1]!, ys[after - 1]!];
  return x + ((level - y) / (ys[after]! - y)) * (xs[after]! - x);
}
