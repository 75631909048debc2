import { describe, expect, it } from 'vitest';
import { spreadOf } from '../../../src/app/pages/spread.ts';

describe('spreadOf', () => {
  it('finds mean 5, range 7/5 and standard deviation 2 of 2 4 4 4 5 5 7 9', () => {
    const spread = spreadOf([2, 4, 4, 4, 5, 5, 7, 9])!;
    expect([spread.mean, spread.range, spread.deviation]).toEqual([5, 7 / 5, 2]);
    expect([spread.leastIndex, spread.mostIndex]).toEqual([0, 7]);
  });

  it('is nothing for one value', () => {
    expect(spreadOf([3])).toMatchObject({ range: 0, deviation: 0, most: 3, least: 3 });
  });

  it('does not answer for some of the cylinders when one is missing', () => {
    expect(spreadOf([1, NaN, 2])).toBeNull();
    expect(spreadOf([])).toBeNull();
  });

  it('has no relative range about a mean of zero', () => {
    expect(spreadOf([-1, 1])!.range).toBeNaN();
  });
});
