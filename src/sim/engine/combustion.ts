export interface Combustion {
  readonly enabled: boolean;
  /** Burned gas of fixed composition, or dissociating above 1500 K. */
  readonly products: 'frozen' | 'equilibrium';
  readonly wiebeA: number;
  readonly wiebeM: number;
  /** Ignition delay and burn duration at the reference state [rad]. */
  readonly delay: number;
  readonly duration: number;
  /** Speed at which delay and duration are stated [rad/s], and the exponent of the speed. */
  readonly referenceSpeed: number;
  readonly speedExponent: number;
  /** Residual mass fraction, unburned temperature and pressure at which duration is stated. */
  readonly referenceResidual: number;
  readonly referenceTemperature: number;
  readonly referencePressure: number;
  /** duration ~ (laminar speed / reference laminar speed)^-exponent. */
  readonly flameSpeedExponent: number;
  /** Share of the fuel that takes part at low residual [-]. */
  readonly completeness: number;
  /** Residual mass fraction from which a misfire is flagged, and width over which burning fades around it. */
  readonly misfireResidual: number;
  readonly misfireWidth: number;
  /** Air over fuel over stoichiometric above and below which a charge does not burn, and the width over which burning fades there [-]. */
  readonly leanLimit: number;
  readonly richLimit: number;
  readonly mixtureWidth: number;
}
