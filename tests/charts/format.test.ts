import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, figure, figureAmong, percent, reachOf } from '../../src/charts/format.ts';

describe('figure', () => {
  it('keeps 3 significant digits without a power of ten from a ten-thousandth to ten million', () => {
    expect([0.00012345, 1.2, 12.345, 12345].map((value) => figure(value))).toEqual([
      '0.000123',
      '1.20',
      '12.3',
      '12345',
    ]);
  });

  it('groups digits from 100 000 on, with narrow spaces that do not break', () => {
    expect([123456, -1234567].map((value) => figure(value))).toEqual([
      '123\u202f456',
      '−1\u202f234\u202f567',
    ]);
  });

  it('writes a true minus, a plain zero, and a dash for what is missing', () => {
    expect([-4.5, 0, NaN, null].map((value) => figure(value, 2))).toEqual(['−4.5', '0', '–', '–']);
  });

  it('writes powers of ten as people do, never with an e', () => {
    expect([3e-7, -4.56e9].map((value) => figure(value, 2))).toEqual([
      '3.0\u202f×\u202f10⁻⁷',
      '−4.6\u202f×\u202f10⁹',
    ]);
  });

  it('has no letter and no hyphen in it, whatever the size', () => {
    fc.assert(
      fc.property(fc.double(), fc.integer({ min: 1, max: 6 }), (value, digits) => {
        expect(figure(value, digits)).toMatch(/^(–|−?[\d.\u202f]+(\u202f×\u202f10[⁻⁰¹²³⁴-⁹]+)?)$/);
      }),
      { seed: 7 },
    );
  });
});

describe('figureAmong', () => {
  it('writes 0.000832 bar beside 0.282 bar with one decimal more than the larger has', () => {
    const column = [0.000832, 0.00314, 0.0735, 0.282, -0.0005];
    expect(column.map((value) => figureAmong(value, reachOf(column)))).toEqual([
      '0.0008',
      '0.0031',
      '0.0735',
      '0.282',
      '−0.0005',
    ]);
  });

  it('reads a trace of 3e-7 among percentages as 0.00, zero as 0 and what is missing as a dash', () => {
    const column = [3e-7, 0, NaN, 98.4];
    expect(column.map((value) => figureAmong(value, reachOf(column)))).toEqual(['0.00', '0', '–', '98.4']);
  });

  it('never writes a power of ten for a figure that is less than the largest, which has none', () => {
    const sizes = fc.double({ min: 1e-3, max: 9e6, noNaN: true });
    fc.assert(
      fc.property(sizes, fc.double({ min: 0, max: 1, noNaN: true }), (reach, share) => {
        expect(figureAmong(share * reach, reach)).not.toContain('×');
      }),
      { seed: 7 },
    );
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
