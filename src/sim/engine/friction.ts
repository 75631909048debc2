export interface Friction {
  /** What the running gear costs: the four terms below, or Blair's 105 S N of rolling bearings. */
  readonly law: 'four terms' | 'stroke times speed';
  /** Of that, what windage, and what bearings take; rings and pistons the rest [-]. */
  readonly bearingShare: number;
  readonly windageShare: number;
  /** Torque at the crank of oil pump, and of starter or generator [N m]. */
  readonly oilPumpTorque: number;
  readonly starterTorque: number;
  /** FMEP = a + b p_max + c c_m + d N^2: [Pa], [-], [Pa s/m], [Pa s^2/rad^2]. */
  readonly constant: number;
  readonly peakPressureFactor: number;
  readonly pistonSpeedFactor: number;
  readonly speedSquaredFactor: number;
  /** Efficiency of the output gears, crank to propeller [-]. */
  readonly outputGearEfficiency: number;
}
