/**
 * Root of a continuous function in a bracket: Brent's method (bisection, secant and inverse quadratic steps).
 *
 * @param f         - function of one number
 * @param a         - one end of the bracket
 * @param b         - the other end; f(a) and f(b) must not have the same sign
 * @param tolerance - half the width of the bracket that is left around the root, same unit as a and b
 * @returns where f changes sign, to `tolerance` plus a few units in the last place
 *
 * Valid: throws a RangeError if the ends do not bracket a root or f is not a number there: that is a bug of the caller.
 * Numerics: never slower than bisection by more than a constant factor; superlinear on smooth functions.
 * Source: Brent, Algorithms for Minimization without Derivatives, 1973, ch. 4.
 */
export function findRoot(f: (x: number) => number, a: number, b: number, tolerance = 1e-14): number {
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa < 0 !== fb < 0) || Number.isNaN(fa) || Number.isNaN(fb))
    throw new RangeError(`no sign change between f(${a}) = ${fa} and f(${b}) = ${fb}`);

  let c = a;
  let fc = fa;
  let step = b - a;
  let previousStep = step;
  for (;;) {
    if (fb < 0 === fc < 0) {
      c = a;
      fc = fa;
      step = b - a;
      previousStep = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const least = 2 * Number.EPSILON * Math.abs(b) + 0.5 * tolerance;
    const half = 0.5 * (c - b);
    if (Math.abs(half) <= least || fb === 0) return b;

    if (Math.abs(previousStep) < least || Math.abs(fa) <= Math.abs(fb)) {
      step = half;
      previousStep = half;
    } else {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const u = fa / fc;
        const v = fb / fc;
        p = s * (2 * half * u * (u - v) - (b - a) * (v - 1));
        q = (u - 1) * (v - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * half * q - Math.abs(least * q), Math.abs(previousStep * q))) {
        previousStep = step;
        step = p / q;
      } else {
        step = half;
        previousStep = half;
      }
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > least ? step : Math.sign(half) * least;
    fb = f(b);
    if (Number.isNaN(fb)) throw new RangeError(`f(${b}) is not a number`);
  }
}
