import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coarseFirst } from '../../src/workers/coarse-first.ts';

describe('coarseFirst', () => {
  it('orders 9 points ends, middle, quarters, eighths', () => {
    expect(coarseFirst(9)).toEqual([0, 8, 4, 2, 6, 1, 3, 5, 7]);
  });

  it('names every point of 0 to 200 exactly once', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), (count) => {
        const sorted = coarseFirst(count).sort((a, b) => a - b);
        expect(sorted).toEqual(Array.from({ length: count }, (_, index) => index));
      }),
    );
  });
});
