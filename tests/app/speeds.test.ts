import { describe, expect, it } from 'vitest';
import { sweepSpeeds } from '../../src/app/speeds.ts';
import { rpm } from '../../src/sim/units.ts';

const speeds_rpm = (cranking: number, low: number, high: number): number[] =>
  sweepSpeeds(
    {
      deliveryRatio: 1,
      crankingSpeed: cranking * rpm,
      starterTorque: null,
      coldFriction: 2,
      minSpeed: low * rpm,
      maxSpeed: high * rpm,
      speed: high * rpm,
    },
    12,
  ).map((speed) => Math.round(speed / rpm));

describe('sweepSpeeds', () => {
  it('goes from cranking at 500 rpm over whole thousands to 9500 rpm', () => {
    expect(speeds_rpm(500, 1000, 9500)).toEqual([
      500, 1000, 2000, 3000, 4000, 5000, 6000, 7000, 8000, 9000, 9500,
    ]);
  });

  it('names no speed twice when cranking is the least speed', () => {
    const speeds = speeds_rpm(800, 800, 4300);
    expect(new Set(speeds).size).toBe(speeds.length);
    expect([speeds[0], speeds.at(-1)]).toEqual([800, 4300]);
  });
});
