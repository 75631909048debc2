import type { Point } from './rod-points.ts';

/** Plane vectors: x along axis angle 0, y a quarter turn on in the direction of rotation. */
export const ORIGIN: Point = { x: 0, y: 0 };
export const polar = (radius: number, angle: number): Point => ({
  x: radius * Math.cos(angle),
  y: radius * Math.sin(angle),
});
export const plus = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const times = (factor: number, a: Point): Point => ({ x: factor * a.x, y: factor * a.y });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
/** Moment of b about the origin at the arm a, positive with the rotation. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
/** A quarter turn on. */
export const quarterOn = (a: Point): Point => ({ x: -a.y, y: a.x });
export const turnedBy = (a: Point, angle: number): Point => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: a.x * cos - a.y * sin, y: a.x * sin + a.y * cos };
};
