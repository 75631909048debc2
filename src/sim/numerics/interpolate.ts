/**
 * Straight-line interpolation in a table.
 *
 * @param xs - places, rising
 * @param ys - values at them, same length
 * @param x  - where
 * @returns the value on the chord between the two neighbours
 *
 * Valid: xs[0] <= x <= xs[last], at least one entry; NaN outside, so that nothing is extrapolated unnoticed.
 * Numerics: binary search, no allocation; exact at the entries.
 */
export function interpolateLinear(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  const last = xs.length - 1;
  if (!(x >= xs[0]! && x <= xs[last]!)) return NaN;
  if (x === xs[last]) return ys[last]!;
  const i = intervalOf(xs, x);
  const t = (x - xs[i]!) / (xs[i + 1]! - xs[i]!);
  return ys[i]! + t * (ys[i + 1]! - ys[i]!);
}

/** Largest i with xs[i] <= x, at most xs.length - 2. For xs[0] <= x. */
export function intervalOf(xs: ArrayLike<number>, x: number): number {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Smooth interpolation that keeps a table's monotony: cubic Hermite, slopes by the weighted harmonic mean of the
 * neighbouring chords (zero where the chords change sign), so no overshoot between the entries.
 *
 *   1/d_i = ( (w1/c_(i-1)) + (w2/c_i) ) / (w1 + w2),   w1 = 2 h_i + h_(i-1),  w2 = h_i + 2 h_(i-1)
 *
 * `evaluate(x)` writes `value` and `slope`, both NaN outside the table; it allocates nothing.
 *
 * Source: Fritsch & Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304; end slopes by the three-point formula
 * limited as in Fritsch & Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246.
 */
export class MonotoneTable {
  value = NaN;
  slope = NaN;
  private readonly xs: Float64Array;
  private readonly ys: Float64Array;
  private readonly slopes: Float64Array;

  constructor(xs: ArrayLike<number>, ys: ArrayLike<number>) {
    if (xs.length < 2 || xs.length !== ys.length)
      throw new RangeError(
        `a table needs two or more pairs, not ${xs.length} places and ${ys.length} values`,
      );
    this.xs = Float64Array.from(xs);
    this.ys = Float64Array.from(ys);
    for (let i = 1; i < xs.length; i++)
      if (!(xs[i]! > xs[i - 1]!))
        throw new RangeError(`places must rise: ${xs[i - 1]} is followed by ${xs[i]}`);
    this.slopes = monotoneSlopes(this.xs, this.ys);
  }

  evaluate(x: number): void {
    const xs = this.xs;
    if (!(x >= xs[0]! && x <= xs[xs.length - 1]!)) {
      this.value = NaN;
      this.slope = NaN;
      return;
    }
    const i = intervalOf(xs, x);
    const h = xs[i + 1]! - xs[i]!;
    const t = (x - xs[i]!) / h;
    const y = this.ys[i]!;
    const d0 = this.slopes[i]! * h;
    const d1 = this.slopes[i + 1]! * h;
    const rise = this.ys[i + 1]! - y;
    const cubic = d0 + d1 - 2 * rise;
    const square = rise - d0 - cubic;
    this.value = y + t * (d0 + t * (square + t * cubic));
    this.slope = (d0 + t * (2 * square + 3 * t * cubic)) / h;
  }
}

function monotoneSlopes(xs: Float64Array, ys: Float64Array): Float64Array {
  const n = xs.length;
  const chord = (i: number): number => (ys[i + 1]! - ys[i]!) / (xs[i + 1]! - xs[i]!);
  const slopes = new Float64Array(n);
  if (n === 2) return slopes.fill(chord(0));
  for (let i = 1; i < n - 1; i++) {
    const before = chord(i - 1);
    const after = chord(i);
    if (before * after <= 0) continue;
    const hBefore = xs[i]! - xs[i - 1]!;
    const hAfter = xs[i + 1]! - xs[i]!;
    const w1 = 2 * hAfter + hBefore;
    const w2 = hAfter + 2 * hBefore;
    slopes[i] = (w1 + w2) / (w1 / before + w2 / after);
  }
  slopes[0] = endSlope(xs[1]! - xs[0]!, xs[2]! - xs[1]!, chord(0), chord(1));
  slopes[n - 1] = endSlope(xs[n - 1]! - xs[n - 2]!, xs[n - 2]! - xs[n - 3]!, chord(n - 2), chord(n - 3));
  return slopes;
}

function endSlope(h: number, hNext: number, chord: number, chordNext: number): number {
  const slope = ((2 * h + hNext) * chord - h * chordNext) / (h + hNext);
  if (slope * chord <= 0) return 0;
  return chord * chordNext <= 0 && Math.abs(slope) > 3 * Math.abs(chord) ? 3 * chord : slope;
}
