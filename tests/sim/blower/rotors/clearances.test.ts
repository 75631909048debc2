import { describe, expect, it } from 'vitest';
import { clearancePaths, clearanceTotal } from '../../../../src/sim/blower/rotors/clearances.ts';
import { mm, mm2 } from '../../../../src/sim/units.ts';

const gaps = { tip: 0.1 * mm, mesh: 0.1 * mm, end: 0.1 * mm };

describe('clearancePaths', () => {
  it('is 24 + 12 + 20 = 56 mm² for straight rotors of 100 mm by 120 mm with gaps of 0.10 mm', () => {
    const paths = clearancePaths(gaps, 100 * mm, 120 * mm);
    expect(paths.tips / mm2).toBeCloseTo(24, 9);
    expect(paths.mesh / mm2).toBeCloseTo(12, 9);
    expect(paths.ends / mm2).toBeCloseTo(20, 9);
    expect(clearanceTotal(paths) / mm2).toBeCloseTo(56, 9);
  });

  it('lengthens the edges of twisted rotors and leaves their ends alone: a helix of 45° by the square root of 2', () => {
    const straight = clearancePaths(gaps, 100 * mm, 50 * mm);
    const twisted = clearancePaths(gaps, 100 * mm, 50 * mm, 1, 100 * mm);
    expect(twisted.tips / straight.tips).toBeCloseTo(Math.SQRT2, 12);
    expect(twisted.mesh / straight.mesh).toBeCloseTo(Math.SQRT2, 12);
    expect(twisted.ends).toBe(straight.ends);
  });
});
