import { describe, expect, it } from 'vitest';
import { lastKnown, nearestIndex, readAt } from '../../src/charts/read-at.ts';

describe('nearestIndex', () => {
  it('picks the nearer neighbour, the end beyond the ends, and -1 of nothing', () => {
    const xs = Float64Array.of(0, 10, 20);
    expect([4, 6, -5, 99].map((x) => nearestIndex(xs, x))).toEqual([0, 1, 0, 2]);
    expect(nearestIndex([], 1)).toBe(-1);
  });
});

describe('readAt', () => {
  it('reads the straight line between points, and the points themselves', () => {
    expect([0, 5, 10, 20].map((x) => readAt([0, 10, 20], [1, 3, 7], x))).toEqual([1, 2, 3, 7]);
  });

  it('is NaN outside the line and beside a gap', () => {
    const read = [-1, 21, 5, NaN].map((x) => readAt([0, 10, 20], [1, null, 7], x));
    expect(read.every(Number.isNaN)).toBe(true);
  });
});

describe('lastKnown', () => {
  it('passes over gaps at the end, and finds nothing in a line of gaps', () => {
    expect(lastKnown([10, 20, 30, 40], [1, 2, NaN, null])).toBe(20);
    expect(lastKnown([10, 20], [NaN, null])).toBeNaN();
  });
});
