import { bar } from '../units.ts';

/**
 * Heat transfer coefficient between gas and cylinder walls.
 *
 *   h = f 130 B^-0.2 p^0.8 T^-0.53 w^0.8        p in bar
 *
 * @param f           - multiplier, 1 as published [-]
 * @param bore        - B [m]
 * @param pressure    - p [Pa]
 * @param temperature - T, mean of the gas [K]
 * @param velocity    - w, of `woschniVelocity` [m/s]
 * @returns [W/(m^2 K)]
 *
 * Valid: mean over the walls, radiation included. Measured on a diesel of 125 mm bore; at 50 mm it lies at a third of what Annand's
 * four-stroke multiplier gives, so f is there to be calibrated. A printed form with 3.26, kPa and T^-0.55 is 16 % lower at 2000 K.
 * Source: Woschni, SAE 670931, 1967.
 */
export const woschniCoefficient = (
  f: number,
  bore: number,
  pressure: number,
  temperature: number,
  velocity: number,
): number => f * 130 * bore ** -0.2 * ((pressure / bar) * velocity) ** 0.8 * temperature ** -0.53;

/**
 * Gas velocity in Woschni's coefficient.
 *
 *   w = C1 c_m + C2 V_s (T_r / (p_r V_r)) max(0, p - p_mot),   p_mot = p_r (V_r / V)^n
 *
 * r is a state of the unburned charge, here at the spark: p_mot is what the piston alone would have made of it.
 *
 * @param C1            - 6.18 while gas is exchanged, 2.28 while the cylinder is shut [-]
 * @param C2            - 3.24e-3 from the spark on, 0 otherwise [m/(s K)]
 * @param pistonSpeed   - c_m, mean [m/s]
 * @param sweptVolume   - V_s [m^3]
 * @param chargeShare   - T_r / (p_r V_r) [K/(Pa m^3)]
 * @param pressure      - p [Pa]
 * @param motored       - p_mot [Pa]
 * @returns [m/s]
 *
 * Source: Woschni 1967; reference state at the start of burning: Heywood, Internal Combustion Engine Fundamentals, 1988, sec. 12.4.3.
 */
export const woschniVelocity = (
  C1: number,
  C2: number,
  pistonSpeed: number,
  sweptVolume: number,
  chargeShare: number,
  pressure: number,
  motored: number,
): number => C1 * pistonSpeed + C2 * sweptVolume * chargeShare * Math.max(0, pressure - motored);
