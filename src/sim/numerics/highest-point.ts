/**
 * Highest point of the parabola through the highest of some samples and its two neighbours.
 *
 *   y' = (h_- s_+ + h_+ s_-) / (h_- + h_+),   x* = x_i + y' (h_- + h_+) / (2 (s_- - s_+)),   y* = y_i + y' (x* - x_i) / 2
 *   s_- and s_+: slopes of the chords before and after the highest sample, h_- and h_+: their lengths in x
 *
 * @param x - rising; @param y - as many
 * @returns the sample itself at either end, or where the neighbours are as high
 *
 * Numerics: exact for a parabola; else true to third order in the spacing. Never below the highest sample.
 */
export function highestPoint(x: ArrayLike<number>, y: ArrayLike<number>): { x: number; y: number } {
  let i = 0;
  for (let k = 1; k < y.length; k++) if (y[k]! > y[i]!) i = k;
  if (i === 0 || i === y.length - 1) return { x: x[i]!, y: y[i]! };
  const before = x[i]! - x[i - 1]!;
  const after = x[i + 1]! - x[i]!;
  const rise = (y[i]! - y[i - 1]!) / before;
  const fall = (y[i + 1]! - y[i]!) / after;
  const bend = rise - fall;
  if (!(bend > 0)) return { x: x[i]!, y: y[i]! };
  const slope = (before * fall + after * rise) / (before + after);
  const step = (slope * (before + after)) / (2 * bend);
  return { x: x[i]! + step, y: y[i]! + 0.5 * slope * step };
}
