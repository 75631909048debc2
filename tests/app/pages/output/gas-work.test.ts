import { describe, expect, it } from 'vitest';
import { gasWorkRows } from '../../../../src/app/pages/output/gas-work.ts';
import { lovage } from '../solved.ts';

describe('gasWorkRows', () => {
  it('leaves out what takes nothing, and ends with what is left', () => {
    const rows = gasWorkRows(lovage());
    expect(rows.map(({ what }) => what)).toEqual([
      'rings',
      'bearings',
      'windage',
      'blowerGas',
      'blowerDrag',
      'brake',
    ]);
    expect(rows.reduce((sum, { share }) => sum + share!, 0)).toBeCloseTo(1, 6);
  });
});
