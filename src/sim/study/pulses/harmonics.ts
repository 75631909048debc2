import { fourierSums } from '../../numerics/fourier-sums.ts';
import type { WorkCurve } from './work-curve.ts';
import { angleOfPart, torqueOfParts } from './work-curve.ts';

/** One harmonic of a torque: amplitude x cos(order x angle - phase) [N m], [rad]. */
export interface Harmonic {
  /** Periods in a turn of the crank; a fraction where the whole repeats after several turns. */
  readonly order: number;
  readonly amplitude: number;
  readonly phase: number;
}

/**
 * Harmonics of the torque that does a work, by engine order: the discrete Fourier sums over equal parts of its period.
 *
 *   c_k = (2/M) sum over parts j of T_j exp(-i n theta_j) / sinc(n h/2),   n = k / turns,   h part, theta_j its middle
 *
 * Dividing by the sinc undoes that T_j is a mean over a part.
 *
 * @param highest - order up to which they are given
 * Numerics: what lies above half of PARTS orders folds back; torque has next to nothing there.
 * Source: see fourierSums.
 */
export function harmonics(work: WorkCurve, turns: number, highest: number): readonly Harmonic[] {
  return fourierSums(torqueOfParts(work), Math.floor(highest * turns)).map(({ re, im }, i): Harmonic => {
    const order = (i + 1) / turns;
    const half = order * (angleOfPart(1) / 2);
    return {
      order,
      amplitude: (half / Math.sin(half)) * Math.hypot(re, im),
      phase: Math.atan2(im, re) + half,
    };
  });
}
