/**
 * Slip factor of an impeller: share of the tip speed that the gas takes up where no flow crosses the blades' slope.
 *
 *   sigma = 1 - sqrt(cos beta) / Z^0.7
 *
 * @param blades    - Z, at the exit [-]
 * @param backsweep - beta, of the blades at the exit, back from radial, 0 <= beta < pi/2 [rad]
 *
 * Valid: eye not much larger than half the tip diameter; Wiesner's limit exp(-8.16 sin(beta_t) / Z) of the radius ratio, 0.5 with
 * 12 radial blades, is not checked.
 * Source: Wiesner, A review of slip factors for centrifugal impellers, J. Eng. Power 89, 1967, 558-572.
 */
export const wiesnerSlipFactor = (blades: number, backsweep: number): number =>
  1 - Math.sqrt(Math.cos(backsweep)) / blades ** 0.7;

/**
 * The same for radial blades by potential flow, 1 - 0.63 pi / Z: another law to hold Wiesner's against.
 *
 * Source: Stanitz, Some theoretical aerodynamic investigations of impellers in radial- and mixed-flow centrifugal compressors,
 * Trans. ASME 74, 1952.
 */
export const stanitzSlipFactor = (blades: number): number => 1 - (0.63 * Math.PI) / blades;
