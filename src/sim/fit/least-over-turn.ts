import { minimize } from '../numerics/minimize.ts';
import { TURN } from '../units.ts';

/** Clearances no further apart are alike, and the first of them is told: what symmetry makes equal, round-off does not [m]. */
export const ALIKE = 1e-9;

/** Two degrees: clearances of a running engine change over tens of them. */
export const FIT_SAMPLES = 180;
const STEP = TURN / FIT_SAMPLES;

export interface LeastOverTurn {
  /** Which of the pairs. */
  readonly pair: number;
  /** [rad], in [0, 2 pi) */
  readonly angle: number;
  readonly value: number;
}

/**
 * The least of several clearances over a turn, and where.
 *
 * Every pair is sampled round the turn; each of its dips that could undercut the least so far, by as much as it changes
 * from one sample to the next, is followed down by Brent's method.
 *
 * @param sampled - [pair][sample] at k STEP [m]
 * @param valueAt - the same at any crank angle [rad]
 *
 * Numerics: angle to about 1e-6 rad, value to round-off where it is smooth and to 1e-8 m where it has a kink.
 */
export function leastOverTurn(
  sampled: readonly Float64Array[],
  valueAt: (pair: number, angle: number) => number,
): LeastOverTurn {
  let best: LeastOverTurn = { pair: -1, angle: NaN, value: Infinity };
  sampled.forEach((values, pair) => {
    values.forEach((value, k) => {
      if (value < best.value - ALIKE) best = { pair, angle: k * STEP, value };
    });
  });
  sampled.forEach((values, pair) => {
    for (let k = 0; k < FIT_SAMPLES; k++) {
      const here = values[k]!;
      const before = values[(k + FIT_SAMPLES - 1) % FIT_SAMPLES]!;
      const after = values[(k + 1) % FIT_SAMPLES]!;
      if (here > before || here > after) continue;
      if (here - Math.max(before - here, after - here) >= best.value) continue;
      const found = minimize((angle) => valueAt(pair, angle), (k - 1) * STEP, (k + 1) * STEP, 1e-6);
      if (found.value < best.value - ALIKE) best = { pair, angle: found.at, value: found.value };
    }
  });
  const turned = best.angle % TURN;
  return { ...best, angle: turned < 0 ? turned + TURN : turned };
}
