/** One piston and what hangs it on the crank pin, in the frame of its row. */
export interface RodSystem {
  readonly crankRadius: number;
  readonly masterRodLength: number;
  /** Axis of the row's master cylinder [rad]. */
  readonly masterAxis: number;
  /** Axis of this cylinder [rad]. */
  readonly axisAngle: number;
  /** 0 for the master itself and for plain rods on one pin [m]. */
  readonly knuckleRadius: number;
  /** Angle of the knuckle pin from the master rod's axis [rad]. */
  readonly knuckleAngle: number;
  /** Length of this cylinder's own rod [m]. */
  readonly rodLength: number;
}

/**
 * Height of a gudgeon pin above the crank axis, for an articulated rod on a knuckle pin of the master rod. Exact.
 *
 *   P     = r (cos theta, sin theta)                              crank pin
 *   alpha = -asin( (r/L) sin(theta - psi_m) )                     tilt of the master rod from its own axis
 *   K     = P + k ( cos(psi_m + alpha + gamma), sin(...) )        knuckle pin
 *   a, b  = K along and across the cylinder axis psi
 *   s     = a + sqrt(l^2 - b^2),    ds/dtheta = a' - b b' / sqrt(l^2 - b^2)
 *
 * with alpha' = -(r/L) cos(theta - psi_m) / cos alpha. The master, and plain rods (k = 0), are the case k = 0 with l
 * the rod's own length: s = r cos(theta - psi) + sqrt(l^2 - r^2 sin^2(theta - psi)).
 *
 * `evaluate(pinAngle)` writes `height` [m], `slope` = ds/dtheta [m/rad] and `offAxis` = b [m]; the next call overwrites
 * them. It allocates nothing. `pinAngle` is the angle of the crank pin in the frame of the row [rad].
 *
 * Valid: L > r, and l > |b| all round, else NaN (see `largestOffAxis`).
 * Numerics: two trigonometric calls; alpha enters by its sine and cosine, so nothing is lost near dead centres.
 * Source: plane geometry; compare Taylor, The Internal Combustion Engine in Theory and Practice, vol. 2, 1985, ch. 8.
 */
export class PistonMotion {
  height = NaN;
  slope = NaN;
  offAxis = NaN;
  readonly rods: RodSystem;
  private readonly radius: number;
  private readonly radiusOverRod: number;
  private readonly masterAxis: number;
  private readonly cosAxis: number;
  private readonly sinAxis: number;
  private readonly alongKnuckle: number;
  private readonly acrossKnuckle: number;
  private readonly rodSquared: number;

  constructor(rods: RodSystem) {
    const fromMaster = rods.axisAngle - rods.masterAxis;
    const knuckleFromAxis = rods.knuckleAngle - fromMaster;
    this.rods = rods;
    this.radius = rods.crankRadius;
    this.radiusOverRod = rods.crankRadius / rods.masterRodLength;
    this.masterAxis = rods.masterAxis;
    this.cosAxis = Math.cos(fromMaster);
    this.sinAxis = Math.sin(fromMaster);
    this.alongKnuckle = rods.knuckleRadius * Math.cos(knuckleFromAxis);
    this.acrossKnuckle = rods.knuckleRadius * Math.sin(knuckleFromAxis);
    this.rodSquared = rods.rodLength * rods.rodLength;
  }

  evaluate(pinAngle: number): void {
    const fromMaster = pinAngle - this.masterAxis;
    const cosMaster = Math.cos(fromMaster);
    const sinMaster = Math.sin(fromMaster);
    const sinTilt = -this.radiusOverRod * sinMaster;
    const cosTilt = Math.sqrt(1 - sinTilt * sinTilt);
    const tiltSlope = (-this.radiusOverRod * cosMaster) / cosTilt;

    const pinAlong = this.radius * (cosMaster * this.cosAxis + sinMaster * this.sinAxis);
    const pinAcross = this.radius * (sinMaster * this.cosAxis - cosMaster * this.sinAxis);
    const knuckleAlong = this.alongKnuckle * cosTilt - this.acrossKnuckle * sinTilt;
    const knuckleAcross = this.acrossKnuckle * cosTilt + this.alongKnuckle * sinTilt;

    const across = pinAcross + knuckleAcross;
    const rodAlong = Math.sqrt(this.rodSquared - across * across);
    this.offAxis = across;
    this.height = pinAlong + knuckleAlong + rodAlong;
    this.slope =
      -pinAcross - tiltSlope * knuckleAcross - (across * (pinAlong + tiltSlope * knuckleAlong)) / rodAlong;
  }
}
