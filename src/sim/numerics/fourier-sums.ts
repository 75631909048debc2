import { TURN } from '../units.ts';

/**
 * Discrete Fourier sums of values at equal steps of one period, of orders 1 to `highest` of it.
 *
 *   re_k = 2/M sum_j f_j cos(2 pi j k / M),   im_k = 2/M sum_j f_j sin(2 pi j k / M)
 *
 * so f is about its mean + sum of re_k cos + im_k sin. Units: those of f.
 *
 * Valid: orders below M/2; what lies above folds back. Source: Brigham, The Fast Fourier Transform and Its Applications, 1988, ch. 6.
 */
export function fourierSums(
  values: Float64Array,
  highest: number,
): readonly { readonly re: number; readonly im: number }[] {
  const parts = values.length;
  const cos = values.map((_, j) => Math.cos((TURN * j) / parts));
  const sin = values.map((_, j) => Math.sin((TURN * j) / parts));
  return Array.from({ length: highest }, (_, i) => {
    const k = (i + 1) % parts;
    let [re, im] = [0, 0];
    for (let j = 0, at = 0; j < parts; j++, at = (at + k) % parts) {
      re += values[j]! * cos[at]!;
      im += values[j]! * sin[at]!;
    }
    return { re: (2 * re) / parts, im: (2 * im) / parts };
  });
}
