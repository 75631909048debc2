import { solveLinear } from './solve-linear.ts';

/** A sum of squares near a place, in matrices: 1/2 x G x - c x, G symmetric and positive definite, row-major. */
export interface Quadratic {
  readonly size: number;
  readonly G: Float64Array;
  readonly c: Float64Array;
}

/**
 * The sum of squares of linear residuals with a price on every unknown, as a quadratic.
 *
 *   1/2 |A x - b|^2 + 1/2 sum price_k x_k^2     =>    G = A'A + diag(price),  c = A'b
 *
 * @param rows  - of A, each with its element of b behind its coefficients
 * @param price - above 0 each, so that what no residual feels stays where it is
 */
export function sumOfSquares(rows: readonly Float64Array[], price: Float64Array): Quadratic {
  const size = price.length;
  const G = new Float64Array(size * size);
  const c = new Float64Array(size);
  for (const row of rows) {
    for (let i = 0; i < size; i++) {
      if (row[i] === 0) continue;
      c[i]! += row[i]! * row[size]!;
      for (let j = 0; j < size; j++) G[i * size + j]! += row[i]! * row[j]!;
    }
  }
  for (let i = 0; i < size; i++) G[i * size + i]! += price[i]!;
  return { size, G, c };
}

const valueAt = ({ size, G, c }: Quadratic, x: Float64Array): number => {
  let value = 0;
  for (let i = 0; i < size; i++) {
    let Gx = 0;
    for (let j = 0; j < size; j++) Gx += G[i * size + j]! * x[j]!;
    value += x[i]! * (0.5 * Gx - c[i]!);
  }
  return value;
};

/** Rounds, halvings of a step, and the relative fall below which it has arrived. */
const MOST_ROUNDS = 200;
const MOST_HALVINGS = 40;
const ARRIVED = 1e-13;

/**
 * Least of a quadratic within bounds: projected Newton steps.
 *
 *   active: at a bound with the gradient pressing against it;   G_ff d_f = -g_f on the free ones;   x <- P(x + t d)
 *
 * @param low, high - bounds, low <= 0 <= high: the search begins at 0
 * @returns the place
 *
 * Valid: G positive definite; then there is one least place, and the free set settles after a few rounds.
 * Numerics: elimination on the free ones; t halved until the value falls, along the path bent by the bounds.
 * Source: Bertsekas, SIAM J. Control Optim. 20, 1982, 221-246.
 */
export function leastWithin(quadratic: Quadratic, low: Float64Array, high: Float64Array): Float64Array {
  const { size, G, c } = quadratic;
  const x = new Float64Array(size);
  let value = 0;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const g = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      g[i] = -c[i]!;
      for (let j = 0; j < size; j++) g[i]! += G[i * size + j]! * x[j]!;
    }
    const free = [...g.keys()].filter((i) => {
      const pinned = (x[i]! <= low[i]! && g[i]! > 0) || (x[i]! >= high[i]! && g[i]! < 0);
      return !pinned && low[i]! < high[i]!;
    });
    const step = newtonStep(quadratic, g, free);
    let fell = 0;
    for (let t = 1, halvings = 0; halvings < MOST_HALVINGS && !(fell > 0); t /= 2, halvings++) {
      const tried = x.slice();
      free.forEach((i, k) => (tried[i] = Math.min(high[i]!, Math.max(low[i]!, x[i]! + t * step[k]!))));
      const then = valueAt(quadratic, tried);
      if (then < value) {
        fell = value - then;
        value = then;
        x.set(tried);
      }
    }
    if (!(fell > ARRIVED * Math.abs(value))) return x;
  }
  return x;
}

/** -G_ff^-1 g_f. */
const newtonStep = ({ size, G }: Quadratic, g: Float64Array, free: readonly number[]): Float64Array =>
  solveLinear(
    free.map((i) => Float64Array.from(free, (j) => G[i * size + j]!)),
    Float64Array.from(free, (i) => -g[i]!),
  );

/**
 * A place within bounds brought onto a grid: rounded, then moved by single steps of one unknown as long as the quadratic falls.
 *
 * @param steps - of the grid through 0, above 0
 * @returns a place from which no single step leads lower; not always the lowest on the grid
 */
export function ontoGrid(
  quadratic: Quadratic,
  place: Float64Array,
  steps: Float64Array,
  low: Float64Array,
  high: Float64Array,
): Float64Array {
  const { size, G, c } = quadratic;
  // Bounds rounded inwards, by a hair's breadth outwards, so that a bound on the grid counts.
  const least = low.map((bound, i) => Math.ceil(bound / steps[i]! - 1e-9));
  const most = high.map((bound, i) => Math.floor(bound / steps[i]! + 1e-9));
  const counts = place.map((x, i) => Math.min(most[i]!, Math.max(least[i]!, Math.round(x / steps[i]!))));
  const x = counts.map((count, i) => count * steps[i]!);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let moved = false;
    for (let i = 0; i < size; i++) {
      let slope = -c[i]!;
      for (let j = 0; j < size; j++) slope += G[i * size + j]! * x[j]!;
      const wanted = Math.round(-slope / G[i * size + i]! / steps[i]!);
      const to = Math.min(most[i]!, Math.max(least[i]!, counts[i]! + wanted));
      const by = (to - counts[i]!) * steps[i]!;
      if (by * (slope + 0.5 * by * G[i * size + i]!) < -1e-15 * Math.abs(slope * by)) {
        counts[i] = to;
        x[i] = to * steps[i]!;
        moved = true;
      }
    }
    if (!moved) break;
  }
  return x;
}
