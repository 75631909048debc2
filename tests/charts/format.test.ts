import { describe, expect, it } from 'vitest';
import { degrees, figure, percent } from '../../src/charts/format.ts';

describe('figure', () => {
  it('keeps 3 significant digits without an exponent from a thousandth to ten million', () => {
    expect([0.0012345, 1.2, 12.345, 123456].map((value) => figure(value))).toEqual([
      '0.00123',
      '1.20',
      '12.3',
      '123456',
    ]);
  });

  it('writes a true minus, a plain zero, and a dash for what is missing', () => {
    expect([-4.5, 0, NaN, null].map((value) => figure(value, 2))).toEqual(['−4.5', '0', '–', '–']);
  });

  it('turns to an exponent at 0.0000003', () => {
    expect(figure(3e-7, 2)).toBe('3.0e−7');
  });
});

describe('percent', () => {
  it('reads a share of 0.066 as 7 % and a missing one as a dash', () => {
    expect([percent(0.066), percent(NaN)]).toEqual(['7\u202f%', '–']);
  });
});

describe('degrees', () => {
  it('rounds to whole degrees', () => {
    expect(degrees(211.7)).toBe('212°');
  });
});
