/**
 * Work of a rotary blower whose pockets shrink before they open to the plenum, per volume taken in.
 *
 *   w = p1 ( (v^(g-1) - 1)/(g-1) - 1 ) + p2 / v
 *     = g/(g-1) p1 (v^(g-1) - 1)  +  (p2 - p1 v^g) / v
 *
 * take in at p1, compress at constant entropy to 1/v of the volume, open to p2 at once, push out. The second term is what over-
 * compression wastes (p2 below p1 v^g) or what rushing back fills up (above).
 *
 * @param ratio - v, volume of a pocket when it closes over that when it opens, >= 1 [-]
 * @param p1    - at the inlet [Pa]
 * @param p2    - at the outlet [Pa]
 * @param gamma - g, ratio of specific heats, > 1 [-]
 * @returns work over the volume taken in [J/m^3]
 *
 * Valid: no leaks, friction or heat. v = 1 is the Roots blower, p2 - p1; p2 = p1 v^g is the isentropic compressor.
 * Source: indicator diagram of a compressor with built-in volume ratio; Eckert, Kältemittelverdichter, 1981; worked out here.
 */
export const workPerVolume = (ratio: number, p1: number, p2: number, gamma: number): number =>
  ratio === 1 ? p2 - p1 : p2 / ratio + p1 * ((ratio ** (gamma - 1) - 1) / (gamma - 1) - 1);

/** Isentropic work on the volume taken in from p1 to p2, g/(g-1) p1 ((p2/p1)^((g-1)/g) - 1) [J/m^3]: the least there is. */
export const leastWorkPerVolume = (p1: number, p2: number, gamma: number): number =>
  (gamma / (gamma - 1)) * p1 * ((p2 / p1) ** ((gamma - 1) / gamma) - 1);
