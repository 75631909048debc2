/** Antoine law of one component of a liquid: log10(p_sat / 1 Pa) = a - b / (T + c), T in K. */
export interface SaturationTerm {
  /** Mole fraction in the liquid [-]. */
  readonly share: number;
  readonly a: number;
  /** [K] */
  readonly b: number;
  /** [K] */
  readonly c: number;
}

/**
 * Pressure of the vapour above a liquid [Pa] at temperature T [K].
 *
 *   p = sum x_i 10^(a_i - b_i / (T + c_i))
 *
 * Valid: ideal liquid of fixed composition. Alcohol in petrol is not ideal (its vapour pressure is higher), and light ends
 * leave first: both make real evaporation better at the start than this says, and petrol's worse at the end.
 * Below a term's own range the law is extrapolated. T must exceed -c_i of every term (52 K for what the model holds).
 * Source: Antoine 1888; Raoult 1887.
 */
export function saturationPressure(terms: readonly SaturationTerm[], T: number): number {
  let p = 0;
  for (const { share, a, b, c } of terms) p += share * 10 ** (a - b / (T + c));
  return p;
}
