/**
 * Where a value stands between the least and the greatest allowed, 0 to 1, so that the usual ones can be told apart:
 * by ratio where the range spans more than a factor of 30 above 0, by cube root where it begins at 0 and the usual
 * values take less than a tenth of it, evenly otherwise.
 */
export function placeInRange(
  value: number,
  min: number,
  max: number,
  plausible: readonly [number, number],
): number {
  if (!(max > min) || !Number.isFinite(value)) return NaN;
  const along = (scale: (x: number) => number) => (scale(value) - scale(min)) / (scale(max) - scale(min));
  if (value < min || value > max) return NaN;
  if (min > 0 && max / min > 30) return along(Math.log);
  if (min === 0 && plausible[1] < max / 10) return along(Math.cbrt);
  return along((x) => x);
}
