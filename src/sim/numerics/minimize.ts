export interface Minimum {
  readonly at: number;
  readonly value: number;
}

/**
 * Local minimum of a continuous function on an interval: Brent's method (golden section and parabolic steps).
 *
 * @param f         - function of one number
 * @param a         - lower end
 * @param b         - upper end
 * @param tolerance - accuracy of the place, same unit as a and b. Near a minimum f is flat to round-off over about
 *                    sqrt(eps |f / f''|): below that it only costs evaluations
 * @returns place and value; the end itself is approached to `tolerance` where the function is monotone
 *
 * Valid: one minimum inside; with several, one of them. Throws a RangeError if f is not a number (a bug of the caller).
 * Source: Brent, Algorithms for Minimization without Derivatives, 1973, ch. 5.
 */
export function minimize(f: (x: number) => number, a: number, b: number, tolerance = 1e-7): Minimum {
  const golden = (3 - Math.sqrt(5)) / 2;
  let low = Math.min(a, b);
  let high = Math.max(a, b);
  let x = low + golden * (high - low);
  let w = x;
  let v = x;
  let fx = f(x);
  let fw = fx;
  let fv = fx;
  let step = 0;
  let previousStep = 0;
  for (;;) {
    if (Number.isNaN(fx)) throw new RangeError(`f(${x}) is not a number`);
    const middle = 0.5 * (low + high);
    const least = 2 * Number.EPSILON * Math.abs(x) + tolerance / 3;
    if (Math.abs(x - middle) <= 2 * least - 0.5 * (high - low)) return { at: x, value: fx };

    let p = 0;
    let q = 0;
    let r = 0;
    if (Math.abs(previousStep) > least) {
      r = (x - w) * (fx - fv);
      q = (x - v) * (fx - fw);
      p = (x - v) * q - (x - w) * r;
      q = 2 * (q - r);
      if (q > 0) p = -p;
      else q = -q;
      r = previousStep;
      previousStep = step;
    }
    if (Math.abs(p) < Math.abs(0.5 * q * r) && p > q * (low - x) && p < q * (high - x)) {
      step = p / q;
      const next = x + step;
      if (next - low < 2 * least || high - next < 2 * least) step = x < middle ? least : -least;
    } else {
      previousStep = x < middle ? high - x : low - x;
      step = golden * previousStep;
    }
    const u = x + (Math.abs(step) >= least ? step : step > 0 ? least : -least);
    const fu = f(u);
    if (Number.isNaN(fu)) throw new RangeError(`f(${u}) is not a number`);
    if (fu <= fx) {
      if (u < x) high = x;
      else low = x;
      v = w;
      fv = fw;
      w = x;
      fw = fx;
      x = u;
      fx = fu;
    } else {
      if (u < x) low = u;
      else high = u;
      if (fu <= fw || w === x) {
        v = w;
        fv = fw;
        w = u;
        fw = fu;
      } else if (fu <= fv || v === x || v === w) {
        v = u;
        fv = fu;
      }
    }
  }
}
