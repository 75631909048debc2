import { describe, expect, it } from 'vitest';
import { placeInRange } from '../../../src/app/sheets/range-mark.ts';

describe('placeInRange', () => {
  it('puts 82.5 in the middle of 15 to 150', () => {
    expect(placeInRange(82.5, 15, 150, [30, 80])).toBe(0.5);
  });
  it('puts 100 in the middle of 1 to 10 000, a range of more than a factor of 30', () => {
    expect(placeInRange(100, 1, 10_000, [10, 100])).toBeCloseTo(0.5, 12);
  });
  it('puts an eighth in the middle of 0 to 1 where usual values end below a tenth', () => {
    expect(placeInRange(0.125, 0, 1, [0.01, 0.05])).toBeCloseTo(0.5, 12);
  });
  it('puts both ends at 0 and 1, and nothing that is not allowed anywhere', () => {
    expect([15, 150].map((value) => placeInRange(value, 15, 150, [30, 80]))).toEqual([0, 1]);
    expect([14.9, 151, NaN].map((value) => placeInRange(value, 15, 150, [30, 80]))).toEqual([NaN, NaN, NaN]);
  });
});
