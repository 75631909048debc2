import { describe, expect, it } from 'vitest';
import { gapBars } from '../../src/charts/gap-bars.ts';

describe('gapBars', () => {
  it('gives two fired together, then a double gap, the whole room inwards and outwards', () => {
    const { radiusOf } = gapBars([0, 240, 120], 120, 100, 20);
    expect([radiusOf(0), radiusOf(120), radiusOf(240)]).toEqual([80, 100, 120]);
  });

  it('keeps all on the circle when every gap is even', () => {
    expect(gapBars([90, 90, 90, 90], 90, 100, 20).radiusOf(90)).toBe(100);
  });

  it('does not blow up a departure of 1 %: 1.8 px where the largest scale is 180 px', () => {
    expect(gapBars([50.5, 49.5], 50, 100, 20).radiusOf(50.5)).toBeCloseTo(101.8, 9);
  });
});
