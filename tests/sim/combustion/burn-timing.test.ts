import { describe, expect, it } from 'vitest';
import { BurnTiming, REFERENCE_LAMBDA } from '../../../src/sim/combustion/burn-timing.ts';
import { flameOf } from '../../../src/sim/combustion/flame.ts';
import { FLAME_SPEED_LAWS, laminarFlameSpeed } from '../../../src/sim/combustion/flame-speed.ts';
import { bar, deg, rpm } from '../../../src/sim/units.ts';

const reference = {
  delay: 10 * deg,
  duration: 50 * deg,
  referenceSpeed: 6000 * rpm,
  speedExponent: 0.3,
  referenceResidual: 0.2,
  referenceTemperature: 700,
  referencePressure: 12 * bar,
  flameSpeedExponent: 0.5,
};
const timing = new BurnTiming(reference, flameOf({ fuel: 'petrol', blend: null }), 1.07);

describe('BurnTiming', () => {
  it('gives the reference angles at the reference state', () => {
    timing.evaluate(6000 * rpm, 700, 12 * bar, REFERENCE_LAMBDA, 0.2);
    expect(timing.delay / deg).toBeCloseTo(10, 12);
    expect(timing.duration / deg).toBeCloseTo(50, 12);
  });

  it('grows both angles by 2^0.3 at twice the speed', () => {
    timing.evaluate(12_000 * rpm, 700, 12 * bar, REFERENCE_LAMBDA, 0.2);
    expect(timing.duration / reference.duration).toBeCloseTo(2 ** 0.3, 12);
    expect(timing.delay / reference.delay).toBeCloseTo(2 ** 0.3, 12);
  });

  it('lengthens burning with residual gas and lean mixture, shortens it with heat', () => {
    const duration = (T: number, lambda: number, residual: number) => {
      timing.evaluate(6000 * rpm, T, 12 * bar, lambda, residual);
      return timing.duration;
    };
    expect(duration(700, 0.88, 0.3)).toBeGreaterThan(duration(700, 0.88, 0.2));
    expect(duration(700, 1.1, 0.2)).toBeGreaterThan(duration(700, 0.88, 0.2));
    expect(duration(750, 0.88, 0.2)).toBeLessThan(duration(700, 0.88, 0.2));
  });

  it('follows the flame speed to the power -0.5, residual mass turned into moles', () => {
    timing.evaluate(6000 * rpm, 640, 9 * bar, 0.95, 0.3);
    const moles = (w: number) => (w * 1.07) / (1 - w + w * 1.07);
    const S = laminarFlameSpeed(FLAME_SPEED_LAWS.petrol, 640, 9 * bar, 0.95, moles(0.3));
    const S0 = laminarFlameSpeed(FLAME_SPEED_LAWS.petrol, 700, 12 * bar, REFERENCE_LAMBDA, moles(0.2));
    expect(timing.duration / reference.duration).toBeCloseTo((S / S0) ** -0.5, 12);
  });

  it('stays finite for pure burned gas and at cranking speed', () => {
    timing.evaluate(150 * rpm, 350, 0.5 * bar, 0.6, 1);
    expect(timing.duration).toBeGreaterThan(reference.duration);
    expect(timing.duration).toBeLessThan(Infinity);
  });
});
