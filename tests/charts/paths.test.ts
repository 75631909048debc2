import { describe, expect, it } from 'vitest';
import { bandPath, linePath, lonePoints, onCircle, petalPath } from '../../src/charts/paths.ts';

const same = (value: number): number => value;

describe('linePath', () => {
  it('draws the points in order, in the places the scales give', () => {
    expect(linePath([0, 1, 2], [0, 5, 1], (x) => 10 * x, same)).toBe('M0,0L10,5L20,1');
  });

  it('leaves a gap at NaN and at null', () => {
    expect(linePath([0, 1, 2, 3, 4, 5], [1, 2, NaN, 3, 4, null], same, same)).toBe('M0,1L1,2M3,3L4,4');
  });

  it('is empty when no point is finite', () => {
    expect(linePath([0, 1], [NaN, NaN], same, same)).toBe('');
  });
});

describe('lonePoints', () => {
  it('finds a point between two gaps and one at an end, not those of a line', () => {
    expect(lonePoints([0, 1, 2, 3, 4, 5, 6], [7, NaN, 8, null, 1, 2, NaN])).toEqual([0, 2]);
    expect(lonePoints([3000], [1])).toEqual([0]);
  });
});

describe('bandPath', () => {
  it('encloses both lines and stops where either is missing', () => {
    expect(bandPath([0, 1, 2], [0, 0, NaN], [1, 2, 3], same, same)).toBe('M0,1L1,2L1,0L0,0Z');
  });
});

describe('onCircle', () => {
  it('starts at the top and goes clockwise: a quarter turn lies to the right', () => {
    const quarter = onCircle(10, Math.PI / 2);
    expect(quarter.x).toBeCloseTo(10, 12);
    expect(quarter.y).toBeCloseTo(0, 12);
    expect(onCircle(10, 0).y).toBe(-10);
  });
});

describe('petalPath', () => {
  it('reaches from the inner radius to the inner radius plus the length', () => {
    const heights = [...petalPath(50, 30, 20).matchAll(/,(-?[\d.]+)/g)].map((match) => Number(match[1]));
    expect(Math.max(...heights)).toBe(-50);
    expect(Math.min(...heights)).toBe(-80);
  });

  it('draws nothing for a length of 0 or NaN', () => {
    expect([petalPath(50, 0, 20), petalPath(50, NaN, 20)]).toEqual(['', '']);
  });
});
