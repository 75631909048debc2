import { describe, expect, it } from 'vitest';
import { stackAt } from '../../src/charts/stack.ts';

describe('stackAt', () => {
  it('sets each piece upon the one before', () => {
    expect(stackAt([[3], [2], [1]], 0)).toEqual([
      { low: 0, high: 3 },
      { low: 3, high: 5 },
      { low: 5, high: 6 },
    ]);
  });

  it('hangs negative pieces below zero, so that they hide no positive one', () => {
    expect(stackAt([[3], [-2], [1], [-4]], 0)).toEqual([
      { low: 0, high: 3 },
      { low: -2, high: 0 },
      { low: 3, high: 4 },
      { low: -6, high: -2 },
    ]);
  });

  it('is a gap altogether where a piece is missing, for the height would read as a sum', () => {
    expect(stackAt([[3], [NaN], [1]], 0)).toEqual([null, null, null]);
  });
});
