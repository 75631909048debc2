/** What ideal stages without internal compression, leaks or friction make of one kilogram of gas. */
export interface IdealStages {
  /** Work over R T of the inlet [-]. */
  readonly work: number;
  /** Isentropic work of one compression over that work [-]. */
  readonly efficiency: number;
  /** Last outlet over inlet temperature [-]. */
  readonly heating: number;
}

/**
 * Ideal Roots stages of equal pressure ratio, one after the other: a bound that no real blower of the kind passes.
 *
 *   stage: w = R T (x - 1),  T_out / T = 1 + (g-1)/g (x - 1),  x = ratio^(1/stages)
 *   efficiency = g/(g-1) (ratio^((g-1)/g) - 1) R T_1 / sum w
 *
 * @param ratio   - delivery over inlet pressure, all stages, >= 1 [-]
 * @param stages  - 1 or more
 * @param cooled  - whether the gas is brought back to T_1 between stages, without loss of pressure
 * @param gamma   - ratio of specific heats [-]
 *
 * Valid: ideal gas of constant specific heats. At ratio 1 nothing is done: efficiency 1.
 * Source: square indicator diagram; Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 6.8.
 */
export function idealRootsStages(ratio: number, stages: number, cooled: boolean, gamma = 1.4): IdealStages {
  const k = (gamma - 1) / gamma;
  const rise = ratio ** (1 / stages) - 1;
  let work = 0;
  let heating = 1;
  for (let stage = 0; stage < stages; stage++) {
    if (cooled) heating = 1;
    work += heating * rise;
    heating *= 1 + k * rise;
  }
  return { work, efficiency: work > 0 ? (ratio ** k - 1) / k / work : 1, heating };
}
