/**
 * Mass flow through a restriction: quasi-steady, one-dimensional, isentropic, ideal gas.
 *
 *   mdot = CdA p0 / sqrt(R T0) * pr^(1/g) * sqrt( 2g/(g-1) * (1 - pr^((g-1)/g)) )
 *   pr   = max( p/p0, (2/(g+1))^(g/(g-1)) )      the max() is the choked limit
 *
 * @param CdA   - discharge coefficient times reference area [m^2]
 * @param p0    - upstream stagnation pressure [Pa]
 * @param T0    - upstream stagnation temperature [K]
 * @param p     - downstream static pressure, 0 <= p <= p0 [Pa]
 * @param gamma - upstream ratio of specific heats, > 1 [-]
 * @param R     - upstream specific gas constant [J/(kg K)]
 * @returns mass flow rate, upstream to downstream, >= 0 [kg/s]
 *
 * Valid: adiabatic, no losses beyond Cd. p > p0 gives NaN: the caller picks the upstream side and the sign.
 * Numerics: the slope is infinite at p = p0; near-equal pressures make the cycle stiff (the step uses smooth-orifice.ts).
 * Source: Heywood, Internal Combustion Engine Fundamentals, 1988, app. C.
 */
export function orificeMassFlow(
  CdA: number,
  p0: number,
  T0: number,
  p: number,
  gamma: number,
  R: number,
): number {
  const criticalRatio = (2 / (gamma + 1)) ** (gamma / (gamma - 1));
  const pr = Math.max(p / p0, criticalRatio);
  const flow = pr ** (1 / gamma) * Math.sqrt(((2 * gamma) / (gamma - 1)) * (1 - pr ** ((gamma - 1) / gamma)));
  return ((CdA * p0) / Math.sqrt(R * T0)) * flow;
}
