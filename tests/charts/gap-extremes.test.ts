import { describe, expect, it } from 'vitest';
import { gapExtremes, pairText } from '../../src/charts/gap-extremes.ts';

/** Gaps of these sizes, one after the other, between cylinders 1, 2, … */
const gaps = (sizes_deg: readonly number[]) =>
  sizes_deg.map((gap_deg, i) => ({
    from: `${i + 1}`,
    to: `${((i + 1) % sizes_deg.length) + 1}`,
    at_deg: sizes_deg.slice(0, i + 1).reduce((sum, size) => sum + size, 0),
    gap_deg,
  }));

describe('gapExtremes', () => {
  it('tells the smallest and the largest of a three-cylinder engine with one pin out of place', () => {
    const { least_deg, most_deg, uneven, count, isLeast, isMost } = gapExtremes(gaps([110, 120, 130]));
    expect([least_deg, most_deg, uneven, count]).toEqual([110, 130, true, 2]);
    expect([110.04, 110.06].map(isLeast)).toEqual([true, false]);
    expect([129.96, 129.94].map(isMost)).toEqual([true, false]);
  });

  it('calls gaps even that differ by less than a twentieth of a degree, none of them an extreme', () => {
    const { uneven, count, isLeast, isMost } = gapExtremes(gaps([120, 120.02, 119.98]));
    expect([uneven, count, isLeast(119.98), isMost(120.02)]).toEqual([false, 3, false, false]);
  });

  it('passes over a gap that is not known, and knows none without gaps', () => {
    expect(gapExtremes(gaps([NaN, 150, 210])).least_deg).toBe(150);
    const none = gapExtremes([]);
    expect([none.least_deg, none.most_deg, none.uneven, none.count]).toEqual([NaN, NaN, false, 0]);
  });
});

describe('pairText', () => {
  it('names up to three pairs', () => {
    expect(pairText(gaps([60, 120, 60, 120]), 60)).toBe('1–2, 3–4');
    expect(pairText(gaps([60, 60, 60, 180]), 60)).toBe('1–2, 2–3, 3–4');
  });

  it('names two of more and counts the others', () => {
    expect(pairText(gaps([60, 60, 60, 60, 120]), 60)).toBe('1–2, 2–3 and 2 more');
  });
});
