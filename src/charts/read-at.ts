import { bisector } from 'd3-array';
import type { Column } from './scales.ts';

const bisectLeft = bisector((value: number) => value).left;

/** Index of the sorted `xs` closest to `x`; -1 when there is none. */
export function nearestIndex(xs: ArrayLike<number>, x: number): number {
  if (xs.length === 0) return -1;
  const right = Math.min(bisectLeft(xs as number[], x), xs.length - 1);
  const left = Math.max(right - 1, 0);
  return x - xs[left]! <= xs[right]! - x ? left : right;
}

/**
 * What a drawn line shows at `x`: the straight line between the neighbouring points of the sorted `xs`. NaN outside
 * the line and in its gaps.
 */
export function readAt(xs: ArrayLike<number>, ys: Column, x: number): number {
  const last = xs.length - 1;
  if (last < 0 || !(x >= xs[0]!) || !(x <= xs[last]!)) return Number.NaN;
  const right = bisectLeft(xs as number[], x);
  const high = ys[right] ?? Number.NaN;
  if (xs[right] === x || right === 0) return high;
  const low = ys[right - 1] ?? Number.NaN;
  const share = (x - xs[right - 1]!) / (xs[right]! - xs[right - 1]!);
  return low + share * (high - low);
}

/** The last of the sorted `xs` at which there is a figure; NaN when there is none. */
export function lastKnown(xs: ArrayLike<number>, ys: Column): number {
  for (let i = ys.length - 1; i >= 0; i--) if (Number.isFinite(ys[i] ?? Number.NaN)) return xs[i]!;
  return Number.NaN;
}
