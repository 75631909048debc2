import type { Constituent } from './constituent.ts';

/** Numbers per piece: cv/R polynomial (5), its integral's coefficients (4 new ones), R a6. */
const STRIDE = 10;

/**
 * The constituents of one model, packed for the step.
 *
 *   cv_i(T) = s_i (a1 - R_i / s_i + a2 T + a3 T^2 + a4 T^3 + a5 T^4)       s_i: scale, R_i for a gas
 *   u_i(T)  = integral of cv_i + s_i a6                              absolute, as in polynomial.ts
 *
 * Valid: as its constituents; outside their ranges the end pieces are extrapolated (see polynomial.ts). A NaN
 * temperature gives NaN: the caller checks the range.
 * Numerics: Horner with divisions done beforehand; nothing is allocated by `evaluate`.
 */
export class ConstituentSet {
  readonly constituents: readonly Constituent[];
  readonly count: number;
  /** Specific gas constants [J/(kg K)]; read-only for callers. */
  readonly gasConstants: Float64Array;
  readonly #breaks: Float64Array;
  /** First break and first piece of each constituent; one more entry closes the last. */
  readonly #firstBreak: Int32Array;
  readonly #coefficients: Float64Array;

  constructor(constituents: readonly Constituent[]) {
    this.constituents = constituents;
    this.count = constituents.length;
    this.gasConstants = Float64Array.from(constituents, (gas) => gas.gasConstant);
    this.#breaks = Float64Array.from(constituents.flatMap((gas) => gas.breaks));
    this.#firstBreak = new Int32Array(this.count + 1);
    constituents.forEach((gas, i) => (this.#firstBreak[i + 1] = this.#firstBreak[i] + gas.breaks.length));
    this.#coefficients = Float64Array.from(
      constituents.flatMap(({ gasConstant: R, scale, pieces }) =>
        pieces.flatMap(([a1, a2, a3, a4, a5, a6]) => {
          const c = [a1 - R / scale, a2, a3, a4, a5].map((a) => scale * a);
          return [...c, c[1] / 2, c[2] / 3, c[3] / 4, c[4] / 5, scale * a6];
        }),
      ),
    );
  }

  /**
   * Internal energy and specific heat of every constituent at one temperature.
   *
   * @param T      - temperature [K]
   * @param u      - receives u_i at `offset + i` [J/kg]
   * @param cv     - receives cv_i at `offset + i` [J/(kg K)]
   * @param offset - first index written
   */
  evaluate(T: number, u: Float64Array, cv: Float64Array, offset: number): void {
    const breaks = this.#breaks;
    const firstBreak = this.#firstBreak;
    const c = this.#coefficients;
    for (let i = 0; i < this.count; i++) {
      let b = firstBreak[i];
      const end = firstBreak[i + 1];
      while (b < end && T > breaks[b]) b++;
      const k = (b + i) * STRIDE; // constituent i is preceded by i pieces more than breaks
      const c0 = c[k];
      cv[offset + i] = c0 + T * (c[k + 1] + T * (c[k + 2] + T * (c[k + 3] + T * c[k + 4])));
      u[offset + i] = c[k + 9] + T * (c0 + T * (c[k + 5] + T * (c[k + 6] + T * (c[k + 7] + T * c[k + 8]))));
    }
  }
}
