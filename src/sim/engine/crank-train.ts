export interface CrankTrain {
  /** Half the master piston's stroke [m]. */
  readonly crankRadius: number;
  readonly masterRodLength: number;
  /** Common radius of the knuckle pins about the crank pin; 0 = plain rods on one pin [m]. */
  readonly knuckleRadius: number;
  /** What sparks are counted back from: every piston's own top dead centre, or the crank pin's pass by every axis, as a plain cam gives. */
  readonly sparkFrom: 'own dead centre' | 'even spacing';
  readonly rows: readonly Row[];
}

export interface Row {
  /** Angle of the row's crank throw, positive with the rotation [rad]. */
  readonly throwAngle: number;
  /** Angle of the row's housing, positive with the rotation [rad]. */
  readonly staggerAngle: number;
  /** Index in `cylinders` of the one that carries the master rod. */
  readonly master: number;
  readonly cylinders: readonly RowCylinder[];
}

export interface RowCylinder {
  /** Axis angle psi in the row's frame, positive with the rotation [rad]. */
  readonly axisAngle: number;
  /** Angle gamma of the knuckle pin from the master rod's axis; unused for the master [rad]. */
  readonly knuckleAngle: number;
  /** Radius of this rod's own knuckle pin, null for the common one; unused for the master [m]. */
  readonly knuckleRadius: number | null;
  /** Length of the articulated rod; unused for the master [m]. */
  readonly rodLength: number;
  /** Barrel raised (+) or lowered from the common height [m]. */
  readonly barrelOffset: number;
  /** Volume put into (+) or taken out of (-) this cylinder's head [m^3]. */
  readonly headVolume: number;
  /** Top edge of the exhaust windows moved away from (+) or towards the deck [m]. */
  readonly exhaustTrim: number;
  readonly transferTrim: number;
  /** Spark before this cylinder's own top dead centre, or the crank pin's pass by its axis: see `sparkFrom` [rad]. */
  readonly sparkAdvance: number;
  /** Index of the collector it exhausts into. */
  readonly collector: number;
}
