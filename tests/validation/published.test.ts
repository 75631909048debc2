import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BANDS, placed } from './published/bands.ts';
import type { Comparison } from './published/comparison.ts';
import { passes, worst } from './published/comparison.ts';
import { report } from './published/report.ts';
import { subjects } from './published/subjects.ts';

const all = subjects();

describe.each(all)('$title', ({ comparisons, unproven }) => {
  it.each(comparisons)('$quantity: within its band of what is printed', (comparison) => {
    expect(worst(comparison).ofBand).toBeLessThanOrEqual(1);
  });

  it('cites a source, gives a reason for every band, and says what it leaves unproven', () => {
    for (const { source, because, values } of comparisons) {
      expect(source).not.toBe('');
      expect(because).not.toBe('');
      expect(values.length).toBeGreaterThan(0);
    }
    expect(unproven.length).toBeGreaterThan(0);
  });
});

describe('docs/validation.md', () => {
  it('is what npm run validate writes', () => {
    expect(readFileSync(new URL('../../docs/validation.md', import.meta.url), 'utf8')).toBe(
      report(all, BANDS),
    );
  });
});

describe('bands in print', () => {
  it.each(BANDS)('$quantity, $low to $high $unit: every preset outside has a reason, none within', (band) => {
    expect(band.source).not.toBe('');
    for (const { value, place, why } of placed(band)) {
      expect(Number.isFinite(value)).toBe(true);
      expect(why === undefined).toBe(place === 'in');
    }
  });
});

describe('worst', () => {
  const comparison = (values: Comparison['values'], within: Comparison['within']): Comparison => ({
    quantity: 'a',
    origin: 'closed form',
    source: 'by hand',
    unit: '',
    values,
    within,
    because: 'digits',
  });

  it('is the value that uses most of its band, which may be another than the farthest off', () => {
    const farther = comparison(
      [
        [100, 101],
        [1, 1.02],
      ],
      { share: 0.05 },
    );
    expect(worst(farther).printed).toBe(1);
    expect(worst(farther).ofBand).toBeCloseTo(0.4, 12);
    expect(passes(farther)).toBe(true);
  });

  it('lets nothing pass that is no number', () => {
    expect(passes(comparison([[1, NaN]], { amount: 1 }))).toBe(false);
  });
});
