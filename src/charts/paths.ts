import { area, line } from 'd3-shape';
import type { Column } from './scales.ts';

type Place = (value: number) => number;

const at = (column: Column, index: number): number => column[index] ?? Number.NaN;

const indices = (length: number): number[] => Array.from({ length }, (_, index) => index);

/** A line through the points; a point that is not finite leaves a gap. */
export function linePath(xs: Column, ys: Column, x: Place, y: Place): string {
  return (
    line<number>()
      .defined((i) => Number.isFinite(at(xs, i)) && Number.isFinite(at(ys, i)))
      .x((i) => x(at(xs, i)))
      .y((i) => y(at(ys, i)))
      .digits(2)(indices(xs.length)) ?? ''
  );
}

/** Indices of points that have a gap or an end on either side, so that a line through them shows nothing. */
export function lonePoints(xs: Column, ys: Column): number[] {
  const there = (i: number): boolean => Number.isFinite(at(xs, i)) && Number.isFinite(at(ys, i));
  return indices(xs.length).filter((i) => there(i) && !there(i - 1) && !there(i + 1));
}

/** The area between two lines over the same xs, with gaps where either is missing. */
export function bandPath(xs: Column, low: Column, high: Column, x: Place, y: Place): string {
  return (
    area<number>()
      .defined((i) => [xs, low, high].every((column) => Number.isFinite(at(column, i))))
      .x((i) => x(at(xs, i)))
      .y0((i) => y(at(low, i)))
      .y1((i) => y(at(high, i)))
      .digits(2)(indices(xs.length)) ?? ''
  );
}

/** A point at distance `radius` from the middle, `angle` clockwise from the top [rad]. */
export function onCircle(radius: number, angle: number): { x: number; y: number } {
  return { x: radius * Math.sin(angle), y: -radius * Math.cos(angle) };
}

/**
 * A petal that stands outwards at the top of a circle about the origin, from `inner` on, `length` long and `width`
 * wide at its widest: flat at the root, round at the tip. Its area grows with its length.
 */
export function petalPath(inner: number, length: number, width: number): string {
  if (!(length > 0)) return '';
  const half = width / 2;
  const root = 0.62 * half;
  const y = (share: number): string => (-(inner + share * length)).toFixed(2);
  const x = (value: number): string => value.toFixed(2);
  return [
    `M${x(-root)},${y(0)}`,
    `C${x(-half)},${y(0.3)} ${x(-half)},${y(0.55)} ${x(-0.8 * half)},${y(0.75)}`,
    `C${x(-0.55 * half)},${y(0.95)} ${x(-0.3 * half)},${y(1)} ${x(0)},${y(1)}`,
    `C${x(0.3 * half)},${y(1)} ${x(0.55 * half)},${y(0.95)} ${x(0.8 * half)},${y(0.75)}`,
    `C${x(half)},${y(0.55)} ${x(half)},${y(0.3)} ${x(root)},${y(0)}Z`,
  ].join('');
}
