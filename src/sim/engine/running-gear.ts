/** What moves, as mass points; rods as two of them. The cycle knows nothing of it. */
export interface Masses {
  /** With pin and rings [kg]. */
  readonly piston: number;
  /** A plain or articulated rod [kg], and its share at the gudgeon pin [-]. */
  readonly rod: number;
  readonly rodUpperShare: number;
  /** With its flange [kg]; centre of mass from the crank pin [m]. Unused where all rods are plain. */
  readonly masterRod: number;
  readonly masterRodCentre: number;
  /** Of a crank throw without counterweight, as a mass at the crank pin [kg]. */
  readonly throw: number;
  /** Of what turns with a throw once a turn, what counterweights balance [-]. */
  readonly balancedShare: number;
  /** Of neighbouring rows along the crank [m]. */
  readonly rowSpacing: number;
}

/** What the crank drives beside the blowers. */
export interface Load {
  /** Of crank and flywheel, and of the load about its own axis [kg m^2]. */
  readonly flywheelInertia: number;
  readonly inertia: number;
  /** Turns of the crank for one of the load; 1 is direct [-]. */
  readonly gearRatio: number;
  /** Of the output gear on the crank, and of the output shaft [m]. */
  readonly gearPitchDiameter: number;
  readonly shaftDiameter: number;
  /** On a torque that is there at once [-]. */
  readonly shockFactor: number;
}
