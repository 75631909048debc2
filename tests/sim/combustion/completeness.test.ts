import { describe, expect, it } from 'vitest';
import { burnedShare } from '../../../src/sim/combustion/completeness.ts';

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
