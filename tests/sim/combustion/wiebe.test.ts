import { describe, expect, it } from 'vitest';
import { wiebeFraction, wiebePhase, wiebeRate } from '../../../src/sim/combustion/wiebe.ts';

describe('wiebeFraction', () => {
  it('burns 99.9 % by the end of the duration for a = 6.908, 99.3 % for a = 5 (Heywood 1988)', () => {
    for (const m of [1.3, 2]) {
      expect(wiebeFraction(1, 6.908, m)).toBeCloseTo(0.999, 5);
      expect(wiebeFraction(1, 5, m)).toBeCloseTo(0.993, 3);
    }
  });

  it('is zero before the start, rises, and tends to 1', () => {
    expect(wiebeFraction(-0.5, 5, 2)).toBe(0);
    expect(wiebeFraction(0, 5, 2)).toBe(0);
    for (let x = 0; x < 1.2; x += 0.05)
      expect(wiebeFraction(x + 0.05, 5, 2)).toBeGreaterThan(wiebeFraction(x, 5, 2));
    expect(wiebeFraction(5, 5, 2)).toBe(1);
  });
});

describe('wiebeRate', () => {
  it('is the slope of the share, by central difference to 1e-7', () => {
    for (const x of [0.05, 0.3, 0.7, 1, 1.1]) {
      const slope = (wiebeFraction(x + 1e-5, 6.9, 1.5) - wiebeFraction(x - 1e-5, 6.9, 1.5)) / 2e-5;
      expect(Math.abs(wiebeRate(x, 6.9, 1.5) - slope)).toBeLessThan(1e-7);
    }
  });

  it('is zero at and before the start', () => {
    expect(wiebeRate(0, 5, 2)).toBe(0);
    expect(wiebeRate(-1, 5, 2)).toBe(0);
  });
});

describe('wiebePhase', () => {
  it('finds where 10, 50 and 90 % are burned', () => {
    for (const share of [0, 0.1, 0.5, 0.9])
      expect(wiebeFraction(wiebePhase(share, 6.9, 1.5), 6.9, 1.5)).toBeCloseTo(share, 12);
  });
});
