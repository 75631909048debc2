import { describe, expect, it } from 'vitest';
import { beyondMixture, burnedShare, mixtureShare } from '../../../src/sim/combustion/completeness.ts';

const at = (residual: number) => burnedShare(residual, 0.97, 0.5, 0.08);

describe('burnedShare', () => {
  it('is whole to 0.46, half at the limit 0.5, nothing from 0.54', () => {
    expect(at(0)).toBe(0.97);
    expect(at(0.4599)).toBe(0.97);
    expect(at(0.5)).toBeCloseTo(0.485, 12);
    expect(at(0.5401)).toBe(0);
    expect(at(1)).toBe(0);
  });

  it('falls with residual and has no slope at either end of the fade', () => {
    for (let r = 0.461; r < 0.539; r += 0.001) expect(at(r + 0.001)).toBeLessThan(at(r));
    expect(Math.abs(at(0.46) - at(0.46 + 1e-5)) / 1e-5).toBeLessThan(0.01);
    expect(Math.abs(at(0.54 - 1e-5) - at(0.54)) / 1e-5).toBeLessThan(0.01);
  });
});

describe('mixtureShare', () => {
  const limits = { leanLimit: 1.5, richLimit: 0.45, mixtureWidth: 0.1 };

  it('is exactly 1 from λ 0.5 to 1.45, half at either limit, 0 beyond and without fuel', () => {
    for (const lambda of [0.5, 0.88, 1, 1.45]) expect(mixtureShare(lambda, limits)).toBe(1);
    for (const lambda of [0.45, 1.5]) expect(mixtureShare(lambda, limits)).toBeCloseTo(0.5, 12);
    for (const lambda of [0.3, 0.4, 1.56, Infinity]) expect(mixtureShare(lambda, limits)).toBe(0);
  });

  it('calls a misfire just where less than half burns', () => {
    for (const lambda of [0.3, 0.44, 0.46, 1, 1.49, 1.51, Infinity])
      expect(beyondMixture(lambda, limits)).toBe(mixtureShare(lambda, limits) < 0.5);
  });
});
