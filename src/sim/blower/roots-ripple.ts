/**
 * Delivery of a Roots pair over its mean, at one rotor angle.
 *
 *   1 + depth cos(2 z phi)
 *
 * The volume displaced per radian is L (R^2 - (rho1^2 + rho2^2)/2), rho1 and rho2 from the two axes to where the rotors touch. On
 * cycloids the contact runs along the two generating circles (radius r_p/(2z)), which makes the ripple a pure cosine of
 * 2 z phi; the mean is exactly 1.
 *
 * @param rotorAngle - phi [rad]; 0 where the lobes touch at the pitch point
 * @param lobes      - z of each rotor
 * @param depth      - amplitude over mean (`cycloidRipple`), helix counted (`helixAttenuation`) [-]
 * @returns [-]
 *
 * Valid: other profiles touch along other lines and add harmonics. The flow back into the pocket that opens to the plenum is not
 * in it: a straight rotor without internal compression pulses the plenum more than its geometric delivery does.
 */
export const rootsRipple = (rotorAngle: number, lobes: number, depth: number): number =>
  1 + depth * Math.cos(2 * lobes * rotorAngle);

/**
 * What is left of the ripple when rotors are twisted: the mean of cos(2 z phi) over the twist.
 *
 *   sin(z psi) / (z psi)
 *
 * @param lobes - z
 * @param twist - psi, of a rotor over its length [rad]; phase counts from the middle of the rotor
 * @returns [-]: 1 straight, 0 at a twist of pi/z (one pulse), negative (opposed) beyond
 *
 * Valid: every section delivers at the common ports at the same time.
 */
export function helixAttenuation(lobes: number, twist: number): number {
  const x = lobes * twist;
  return x === 0 ? 1 : Math.sin(x) / x;
}
