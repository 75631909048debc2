/**
 * Wiebe function: share of the charge burned, and its slope.
 *
 *   share(x) = 1 - exp(-a x^(m+1)),   x = (theta - start) / duration,   0 for x <= 0
 *
 * @param x - share of the burn duration elapsed; may exceed 1 [-]
 * @param a - efficiency factor: 1 - exp(-a) is burned at x = 1; 6.908 makes that 99.9 % [-]
 * @param m - form factor; typical 1.3 for two-strokes, 2 for four-strokes [-]
 *
 * Valid: a shape, not a theory of burning. Numerics: not cut off at x = 1, so neither share nor rate jumps there.
 * Source: Wiebe, Brennverlauf und Kreisprozess von Verbrennungsmotoren, 1970; Heywood 1988, eq. 9.27; Blair, Design and
 * Simulation of Two-Stroke Engines, 1996, ch. 4.
 */
export const wiebeFraction = (x: number, a: number, m: number): number =>
  x > 0 ? -Math.expm1(-a * x ** (m + 1)) : 0;

/** Slope of the share burned by x [-]: a (m + 1) x^m exp(-a x^(m+1)); divide by the duration for a rate. See above. */
export function wiebeRate(x: number, a: number, m: number): number {
  if (!(x > 0)) return 0;
  const power = a * x ** m;
  return (m + 1) * power * Math.exp(-power * x);
}

/** Where a share is burned [-]: x = (-ln(1 - share) / a)^(1/(m+1)), 0 <= share < 1. See above. */
export const wiebePhase = (share: number, a: number, m: number): number =>
  (-Math.log1p(-share) / a) ** (1 / (m + 1));
