import type { RodSystem } from './crank-train.ts';
import type { Point } from './rod-points.ts';
import { cross, dot, minus, plus, polar, quarterOn, times } from './vectors.ts';

/** A point of the rods with its first and second derivative by the pin angle [m, m/rad, m/rad^2]. */
export interface MovingPoint {
  readonly at: Point;
  readonly rate: Point;
  readonly bend: Point;
}

export interface RodAccelerations {
  /** Unit vector of the cylinder's axis, from the crank outwards. */
  readonly axis: Point;
  readonly crankPin: MovingPoint;
  /** Where this rod begins: its knuckle pin, or the crank pin. */
  readonly lowerPin: MovingPoint;
  readonly gudgeonPin: MovingPoint;
  /** Unit vector along the rod, from its lower pin to the gudgeon pin. */
  readonly rod: Point;
}

/**
 * The pins of one cylinder's rods, in the frame of the row, with exact derivatives. At constant speed an acceleration is
 * omega^2 times `bend`.
 *
 *   sin alpha = -(r/L) sin phi,   alpha' = -(r/L) cos phi / cos alpha,   alpha'' = tan alpha (alpha'^2 - 1)
 *   K   = P + k (cos beta, sin beta),   beta = psi_m + alpha + gamma,   K'' = P'' + k (alpha'' n_beta - alpha'^2 u_beta)
 *   s   = a + q,   q = sqrt(l^2 - b^2),   q' = -b b'/q,   q'' = -(b'^2 + b b'' + q'^2)/q
 *
 * phi pin angle from the master's axis; a, b: K along and across the cylinder axis; names as in `PistonMotion`.
 *
 * @param pinAngle - crank pin in the frame of the row [rad]
 * Valid: rods that go round, else NaN. Numerics: closed form, round-off only.
 * Source: `PistonMotion` differentiated once more.
 */
export function rodAccelerations(rods: RodSystem, pinAngle: number): RodAccelerations {
  const pin = polar(rods.crankRadius, pinAngle);
  const crankPin = { at: pin, rate: quarterOn(pin), bend: times(-1, pin) };
  const axis = polar(1, rods.axisAngle);
  const lowerPin = rods.knuckleRadius === 0 ? crankPin : knucklePin(rods, pinAngle, crankPin);
  const along = (of: keyof MovingPoint) => dot(lowerPin[of], axis);
  const across = (of: keyof MovingPoint) => cross(axis, lowerPin[of]);
  const [b, bRate, bBend] = [across('at'), across('rate'), across('bend')];
  const q = Math.sqrt(rods.rodLength ** 2 - b * b);
  const qRate = (-b * bRate) / q;
  const qBend = -(bRate * bRate + b * bBend + qRate * qRate) / q;
  const gudgeonPin = {
    at: times(along('at') + q, axis),
    rate: times(along('rate') + qRate, axis),
    bend: times(along('bend') + qBend, axis),
  };
  return {
    axis,
    crankPin,
    lowerPin,
    gudgeonPin,
    rod: times(1 / rods.rodLength, minus(gudgeonPin.at, lowerPin.at)),
  };
}

function knucklePin(rods: RodSystem, pinAngle: number, crankPin: MovingPoint): MovingPoint {
  const ratio = rods.crankRadius / rods.masterRodLength;
  const fromMaster = pinAngle - rods.masterAxis;
  const sinTilt = -ratio * Math.sin(fromMaster);
  const cosTilt = Math.sqrt(1 - sinTilt * sinTilt);
  const tiltRate = (-ratio * Math.cos(fromMaster)) / cosTilt;
  const tiltBend = (sinTilt / cosTilt) * (tiltRate * tiltRate - 1);
  const arm = polar(rods.knuckleRadius, rods.masterAxis + Math.asin(sinTilt) + rods.knuckleAngle);
  const on = quarterOn(arm);
  return {
    at: plus(crankPin.at, arm),
    rate: plus(crankPin.rate, times(tiltRate, on)),
    bend: plus(crankPin.bend, minus(times(tiltBend, on), times(tiltRate * tiltRate, arm))),
  };
}
