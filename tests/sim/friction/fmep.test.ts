import { describe, expect, it } from 'vitest';
import { fmep } from '../../../src/sim/friction/fmep.ts';
import { bar, rpm } from '../../../src/sim/units.ts';

const none = { constant: 0, peakPressureFactor: 0, pistonSpeedFactor: 0, speedSquaredFactor: 0 };

describe('fmep', () => {
  // 105 Pa per metre of stroke and rpm (Blair 1996): 3150 Pa s/m.
  it.each([
    [10, 0.315],
    [18, 0.567],
  ])('of rolling bearings at %d m/s is %d bar', (speed, expected) => {
    expect(fmep({ ...none, pistonSpeedFactor: 3150 }, 0, speed, 0) / bar).toBeCloseTo(expected, 12);
  });

  it('is 105 S N: 50 mm at 6000 rpm', () => {
    const [stroke, speed_rpm] = [0.05, 6000];
    const pistonSpeed = (2 * stroke * (speed_rpm * rpm)) / (2 * Math.PI);
    expect(fmep({ ...none, pistonSpeedFactor: 3150 }, 0, pistonSpeed, 0)).toBeCloseTo(
      105 * stroke * speed_rpm,
      8,
    );
  });

  it('adds its four terms', () => {
    const all = {
      constant: 12e3,
      peakPressureFactor: 0.004,
      pistonSpeedFactor: 2000,
      speedSquaredFactor: 0.01,
    };
    expect(fmep(all, 40 * bar, 10, 600)).toBeCloseTo(12e3 + 16e3 + 20e3 + 3.6e3, 8);
    expect(fmep(none, 40 * bar, 10, 600)).toBe(0);
  });
});
