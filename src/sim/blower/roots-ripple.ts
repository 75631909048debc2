import type { Blower } from '../engine.ts';

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

type SideBySide = Pick<Blower, 'count' | 'lobes' | 'phase' | 'phaseStep'>;

/** What equal blowers side by side ripple like: one of them, its depth reduced. */
export interface RipplesTogether {
  /** Of the single blower's depth, 0 to 1 [-]. */
  readonly share: number;
  /** Rotor angle at crank angle 0 of a blower that ripples as all do together [rad]. */
  readonly phase: number;
}

/**
 * The mean of equal ripples at their phases, which is again one cosine.
 *
 *   phi_k = phase + k step,   share e^(i 2 z phase') = mean over k of e^(i 2 z phi_k)
 *
 * z lobes; phi_k [rad]: where the rotors of blower k, counted from 0, stand at crank angle 0.
 *
 * Valid: equal blowers geared alike, delivering into one plenum at the same instant.
 */
export function ripplesTogether({ count, lobes, phase, phaseStep }: SideBySide): RipplesTogether {
  if (count === 1 || phaseStep === 0) return { share: 1, phase };
  let [along, across] = [0, 0];
  for (let k = 0; k < count; k++) {
    const angle = 2 * lobes * (phase + k * phaseStep);
    along += Math.cos(angle) / count;
    across += Math.sin(angle) / count;
  }
  return { share: Math.hypot(along, across), phase: Math.atan2(across, along) / (2 * lobes) };
}
