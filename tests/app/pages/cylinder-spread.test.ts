import { describe, expect, it } from 'vitest';
import { cylinderSpread } from '../../../src/app/pages/cylinder-spread.ts';

describe('cylinderSpread', () => {
  it('finds mean 5, range 7/5 and standard deviation 2 of 2 4 4 4 5 5 7 9', () => {
    const spread = cylinderSpread([2, 4, 4, 4, 5, 5, 7, 9])!;
    expect([spread.mean, spread.relativeRange, spread.deviation]).toEqual([5, 7 / 5, 2]);
    expect([spread.leastIndex, spread.mostIndex]).toEqual([0, 7]);
  });

  it('is nothing for one value', () => {
    expect(cylinderSpread([3])).toMatchObject({
      range: 0,
      relativeRange: 0,
      deviation: 0,
      most: 3,
      least: 3,
    });
  });

  it('does not answer for some of the cylinders when one is missing', () => {
    expect(cylinderSpread([1, NaN, 2])).toBeNull();
    expect(cylinderSpread([])).toBeNull();
  });

  it('has no relative range about a mean of zero', () => {
    expect(cylinderSpread([-1, 1])!.relativeRange).toBeNaN();
  });
});
