import { describe, expect, it } from 'vitest';
import { nearestPoint } from '../../src/charts/nearest-point.ts';

const same = (value: number): number => value;

describe('nearestPoint', () => {
  // A square gone round once.
  const xs = [0, 10, 10, 0];
  const ys = [0, 0, 10, 10];

  it('finds each corner of a square from within its quarter', () => {
    const places = [
      { x: 1, y: 2 },
      { x: 8, y: 1 },
      { x: 7, y: 9 },
      { x: 4, y: 6 },
    ];
    expect(places.map((at) => nearestPoint(xs, ys, same, same, at))).toEqual([0, 1, 2, 3]);
  });

  it('measures on the page, not in figures: a scale that flattens x lets y decide', () => {
    const flat = (value: number): number => value / 100;
    expect(nearestPoint(xs, ys, flat, same, { x: 0.1, y: 9 })).toBe(2);
    expect(nearestPoint(xs, ys, flat, same, { x: 0, y: 9 })).toBe(3);
  });

  it('passes over gaps and finds nothing where there is nothing', () => {
    expect(nearestPoint([NaN, 5], [0, null], same, same, { x: 0, y: 0 })).toBe(-1);
    expect(nearestPoint([NaN, 5], [0, 5], same, same, { x: 0, y: 0 })).toBe(1);
  });
});
