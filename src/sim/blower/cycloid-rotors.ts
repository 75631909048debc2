/**
 * A pair of straight cycloidal Roots rotors without lands: the displacement that follows from the shape, in closed form.
 *
 *   tip radius R = r_p (1 + 1/z), r_p pitch radius, z lobes; section of one rotor A = pi r_p^2 (1 + 1/(2 z^2))
 *   displaced in one turn of the pair: V = 2 (pi R^2 - A) L
 *
 * Source: area under epi- and hypocycloids of the generating circle r_p/(2z), worked out here. Real profiles displace
 * up to an eighth more: Ware, NACA TR 230, gives 0.51 cu ft where this gives 0.45.
 *
 * @param tipDiameter - [m]
 * @param length - of a rotor [m]
 * @param lobes - of one rotor, 2 to 4 [-]
 * @returns volume displaced by the pair in one turn [m^3]
 */
export function cycloidDisplacement(tipDiameter: number, length: number, lobes: number): number {
  const filled = (1 + 1 / (2 * lobes * lobes)) / (1 + 1 / lobes) ** 2;
  return 0.5 * Math.PI * tipDiameter * tipDiameter * length * (1 - filled);
}

/**
 * Half the swing of the displaced flow over its mean, straight cycloidal rotors.
 *
 *   flow ~ R^2 - r_p^2 - e^2,  e = distance of the contact from the pitch point = (r_p/z) |sin|
 *   swing/2 over mean = 1 / (4 z + 1)
 *
 * @param lobes - of one rotor [-]
 * @returns amplitude over mean, at 2 z periods in a turn [-]
 */
export const cycloidRipple = (lobes: number): number => 1 / (4 * lobes + 1);
