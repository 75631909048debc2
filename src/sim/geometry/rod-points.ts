import type { RodSystem } from './crank-train.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface RodPoints {
  readonly crankPin: Point;
  /** Where this cylinder's rod begins: the knuckle pin, or the crank pin for a master or plain rod. */
  readonly knucklePin: Point;
  readonly gudgeonPin: Point;
}

/**
 * Where the pins stand, in the frame of the row: x along axis angle 0, y a quarter turn on in the direction of rotation [m].
 * For drawing; the equations are those of `PistonMotion`.
 *
 * @param rods     - one cylinder's rods
 * @param pinAngle - crank pin in the frame of the row [rad]
 */
export function rodPoints(rods: RodSystem, pinAngle: number): RodPoints {
  const crankPin = polar(rods.crankRadius, pinAngle);
  const tilt = -Math.asin((rods.crankRadius / rods.masterRodLength) * Math.sin(pinAngle - rods.masterAxis));
  const arm = polar(rods.knuckleRadius, rods.masterAxis + tilt + rods.knuckleAngle);
  const knucklePin = { x: crankPin.x + arm.x, y: crankPin.y + arm.y };
  const axis = polar(1, rods.axisAngle);
  const along = knucklePin.x * axis.x + knucklePin.y * axis.y;
  const across = knucklePin.y * axis.x - knucklePin.x * axis.y;
  const height = along + Math.sqrt(rods.rodLength ** 2 - across ** 2);
  return { crankPin, knucklePin, gudgeonPin: { x: height * axis.x, y: height * axis.y } };
}

const polar = (radius: number, angle: number): Point => ({
  x: radius * Math.cos(angle),
  y: radius * Math.sin(angle),
});
