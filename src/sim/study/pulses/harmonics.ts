import { TURN } from '../../units.ts';
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
 * Source: Brigham, The Fast Fourier Transform and Its Applications, 1988, ch. 6.
 */
export function harmonics(work: WorkCurve, turns: number, highest: number): readonly Harmonic[] {
  const torque = torqueOfParts(work);
  const parts = torque.length;
  const cos = torque.map((_, j) => Math.cos((TURN * j) / parts));
  const sin = torque.map((_, j) => Math.sin((TURN * j) / parts));
  return Array.from({ length: Math.floor(highest * turns) }, (_, i): Harmonic => {
    const k = i + 1;
    let [re, im] = [0, 0];
    for (let j = 0, at = 0; j < parts; j++, at = (at + k) % parts) {
      re += torque[j]! * cos[at]!;
      im += torque[j]! * sin[at]!;
    }
    const half = (k / turns) * (angleOfPart(1) / 2);
    const scale = (2 / parts) * (half / Math.sin(half));
    const phase = Math.atan2(im, re) + half;
    return { order: k / turns, amplitude: scale * Math.hypot(re, im), phase };
  });
}
