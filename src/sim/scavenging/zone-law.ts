/**
 * How a fresh and a burned zone at one pressure share a cylinder, told by one number, the fresh zone's volume share beyond the one that
 * it would have at one temperature:
 *
 *   delta = phi - phi_m,   phi = V_f / V,   phi_m = m_f R_f / (m R)      so  T_f / T = 1 + delta / phi_m,  T_b / T = 1 - delta / (1 - phi_m)
 *
 * From the energy of either zone, dH_f = V_f dp + sum h dm + Q_f, at equal and constant gamma
 *
 *   d phi = sum over flows of (dV_f - phi dV) / V        dV: volume of what flows, dV_f: of its fresh part, each at its own temperature
 *
 * so compression and expansion leave phi as it is, and so does heat that both zones give in proportion to their volumes. phi_m
 * follows from masses by the same sum with all at one temperature; what both have in common drops out of delta.
 *
 * Masses [kg], R [J/(kg K)], shares [-]. T: temperature of the whole at which p V = m R T.
 * Valid: ideal gases of like specific heats. Where they differ, the zones at these temperatures would have another pressure than their mixture at
 * the same energy: by 1 % in an engine that displaces up to 0.4, by 6 % for air at 330 K that has displaced most of burned gas at 1100 K.
 * Source: first law for each of two volumes at one pressure; zones of the kind: Benson, Int. J. Mech. Sci. 19 (1977).
 */

/**
 * Change of delta per kilogram that enters at its own temperature.
 *
 *   [ (T_i / T) (F_i - phi R_i) - (F_i - phi_m R_i) ] / (m R)
 *
 * Where F_i < 0, gas staler than the old gas came in: so much of the fresh zone, at its own temperature, counts as old from then on.
 *
 * @param hotness    - T_i / T of what enters over the whole [-]
 * @param freshR     - F_i: of its gas constant, what belongs to the fresh zone [J/(kg K)]
 * @param gasConstant - R_i [J/(kg K)]
 * @param phi        - volume share of the fresh zone [-]
 * @param phiMixed   - the same at one temperature [-]
 * @param massR      - m R of the cylinder [J/K]
 * @returns [1/kg]
 */
export const shiftByInflow = (
  hotness: number,
  freshR: number,
  gasConstant: number,
  phi: number,
  phiMixed: number,
  massR: number,
): number => {
  const freshHotness = freshR >= 0 ? hotness : phiMixed > 0 ? phi / phiMixed : 1;
  return (freshHotness * freshR - hotness * phi * gasConstant - (freshR - phiMixed * gasConstant)) / massR;
};

/**
 * Change of delta per kilogram that leaves, beta of it from the fresh zone and the rest from the burned one.
 *
 *   -(B / m) delta (1 - phi - phi_m),   B = beta / xi - (1 - beta) / (1 - xi)
 *
 * Nothing changes where the bulk leaves, beta = xi.
 *
 * @param beta - mass share of the fresh zone in what leaves [-]
 * @param xi   - mass share of the fresh zone in the cylinder, between 0 and 1 [-]
 * @param mass - of the cylinder [kg]
 * @returns [1/kg]
 */
export const shiftByOutflow = (
  beta: number,
  xi: number,
  phi: number,
  phiMixed: number,
  mass: number,
): number => (-(beta / xi - (1 - beta) / (1 - xi)) * (phi - phiMixed) * (1 - phi - phiMixed)) / mass;

/**
 * Rate at which delta dies away because the zones mix, as the purity law has it:
 *
 *   k = k_m mu q / (mu q + k_m (1 - mu)),   mu = min( beta / xi, (1 - beta) / (1 - xi) )
 *
 * mu is the share of what leaves that is a sample of the bulk: 0 while one zone alone leaves (displacement, nothing mixes), 1 where the bulk
 * leaves (mixing, at once: the highest rate k_m). Between them the zones mix mu / (1 - mu) times for every cylinder filling that passes, q.
 *
 * @param passing - q: mass that enters and leaves, half of each, over the mass inside [1/s]
 * @param highest - k_m [1/s]
 * @returns k [1/s]
 *
 * Valid: a closure, not a measurement. It decides little: while mu = 0 there is no k, and where mu = 1 what leaves is the bulk whatever T_f is.
 */
export function mixingRate(beta: number, xi: number, passing: number, highest: number): number {
  const mu = Math.max(0, Math.min(beta / xi, (1 - beta) / (1 - xi)));
  const stirred = mu * passing;
  const still = highest * (1 - mu);
  return stirred + still > 0 ? (highest * stirred) / (stirred + still) : highest;
}
