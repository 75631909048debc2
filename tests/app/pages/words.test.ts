import { describe, expect, it } from 'vitest';
import { countWord, shareText } from '../../../src/app/pages/words.ts';

describe('shareText', () => {
  it('keeps two figures, so that 0.07 % does not read as nothing, and no more than whole percents near all', () => {
    expect([0.00074, 0.0355, 0.143, 1, 1.05].map(shareText)).toEqual([
      '0.074\u202f%',
      '3.5\u202f%',
      '14\u202f%',
      '100\u202f%',
      '105\u202f%',
    ]);
  });

  it('reads what round-off leaves as nothing', () => {
    expect([3e-18, -1e-15, 0].map(shareText)).toEqual(Array(3).fill('0\u202f%'));
  });

  it('reads as missing for NaN', () => {
    expect(shareText(NaN)).toBe('–\u202f%');
  });
});

describe('countWord', () => {
  it('spells up to twelve and counts beyond', () => {
    expect([1, 7, 12, 13, 56].map(countWord)).toEqual(['one', 'seven', 'twelve', '13', '56']);
  });
});
