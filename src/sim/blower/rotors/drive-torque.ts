/**
 * Amplitude of the torque that turning the rotors unevenly asks of the crank.
 *
 *   crank speed omega (1 + eps sin(n theta))   =>   T = J ratio^2 n eps omega^2
 *
 * @param inertia   - J of everything that turns at rotor speed, all blowers [kg m^2]
 * @param ratio     - rotor speed over crank speed [-]
 * @param speed     - omega of the crank, mean [rad/s]
 * @param amplitude - eps, half the swing of the crank's speed over its mean, << 1 [-]
 * @param order     - n, swings in a turn of the crank [-]
 * @returns at the crank [N m]; at the rotors it is this over the ratio
 *
 * Valid: a stiff drive; one that yields near this frequency can multiply it, and backlash turns it into blows.
 * Source: Newton's second law.
 */
export const unevenDriveTorque = (
  inertia: number,
  ratio: number,
  speed: number,
  amplitude: number,
  order: number,
): number => inertia * ratio * ratio * order * amplitude * speed * speed;
