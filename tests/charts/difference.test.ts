import { describe, expect, it } from 'vitest';
import { difference } from '../../src/charts/difference.ts';

describe('difference', () => {
  it('gives the change with its sign and its share: 1.071 from 1.05 is +0.021, 2 %', () => {
    expect(difference(1.071, 1.05)).toBe('+0.021 (+2\u202f%)');
    expect(difference(18, 20)).toBe('−2.0 (−10\u202f%)');
  });

  it('counts the share by size, so that a loss that grows is a minus', () => {
    expect(difference(-300, -200)).toBe('−100 (−50\u202f%)');
  });

  it('shows a change below a percent with one figure, never as nothing', () => {
    expect(difference(1000.4, 1000)).toBe('+0.40 (+0.04\u202f%)');
  });

  it('gives no share of zero, nor where zero is a convention', () => {
    expect(difference(0.2, 0)).toBe('+0.20');
    expect(difference(620, 600, false)).toBe('+20');
  });

  it('gives no share from tenfold on, where it says no more than the figures', () => {
    expect(difference(600, 50)).toBe('+550');
  });

  it('says that nothing changed, and nothing where a figure is missing', () => {
    expect(difference(1.05, 1.05)).toBe('the same');
    expect([difference(NaN, 1), difference(1, null)]).toEqual(['', '']);
  });
});
