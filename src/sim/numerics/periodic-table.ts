import { TURN } from '../units.ts';

/**
 * A function of period one turn, held as values and slopes at equally spaced knots: cubic Hermite between them.
 *
 *   y(t) = y0 + t (d0 + t (b + t a)),   a = d0 + d1 - 2 (y1 - y0),  b = (y1 - y0) - d0 - a,   d = h y'
 *
 * `evaluate(theta)` takes any finite angle, writes `value` and `slope` (overwritten by the next call) and allocates nothing.
 *
 * Numerics: value and slope are continuous over the whole turn. Error of the value at most h^4 max|y''''| / 384, of the
 * slope about h^3 max|y''''| / 125; h = 2 pi / knots.
 * Source: any text on piecewise Hermite interpolation, such as Stoer & Bulirsch, Introduction to Numerical Analysis, ch. 2.
 */
export class PeriodicTable {
  value = NaN;
  slope = NaN;
  readonly knots: number;
  private readonly knotsPerRadian: number;
  /** Value, slope times spacing, value, slope times spacing ...; the first knot repeated at the end. */
  private readonly nodes: Float64Array;

  /**
   * @param values - at the angles 2 pi i / n, any unit
   * @param slopes - derivatives there, that unit per radian
   */
  constructor(values: ArrayLike<number>, slopes: ArrayLike<number>) {
    const n = values.length;
    if (n < 1 || slopes.length !== n)
      throw new RangeError(`a periodic table needs as many slopes as values, not ${slopes.length} and ${n}`);
    this.knots = n;
    this.knotsPerRadian = n / TURN;
    this.nodes = new Float64Array(2 * n + 2);
    for (let i = 0; i <= n; i++) {
      this.nodes[2 * i] = values[i % n]!;
      this.nodes[2 * i + 1] = slopes[i % n]! * (TURN / n);
    }
  }

  evaluate(theta: number): void {
    const place = theta * this.knotsPerRadian;
    const cell = Math.floor(place);
    const t = place - cell;
    let i = cell % this.knots;
    if (i < 0) i += this.knots;
    const nodes = this.nodes;
    const y = nodes[2 * i]!;
    const d0 = nodes[2 * i + 1]!;
    const rise = nodes[2 * i + 2]! - y;
    const a = d0 + nodes[2 * i + 3]! - 2 * rise;
    const b = rise - d0 - a;
    this.value = y + t * (d0 + t * (b + t * a));
    this.slope = (d0 + t * (2 * b + 3 * t * a)) * this.knotsPerRadian;
  }
}
