import { describe, expect, it } from 'vitest';
import { FIT_SAMPLES, leastOverTurn } from '../../../src/sim/fit/least-over-turn.ts';
import { TURN } from '../../../src/sim/units.ts';

const least = (curves: readonly ((angle: number) => number)[]) =>
  leastOverTurn(
    curves.map((curve) =>
      Float64Array.from({ length: FIT_SAMPLES }, (_, k) => curve((k * TURN) / FIT_SAMPLES)),
    ),
    (pair, angle) => curves[pair]!(angle),
  );

describe('leastOverTurn', () => {
  it('finds the dip of a cosine between two samples, angle to 1e-6 and value to round-off', () => {
    const found = least([(angle) => 5 - 2 * Math.cos(angle - 1.2345)]);
    expect(found.angle).toBeCloseTo(1.2345, 6);
    expect(found.value).toBeCloseTo(3, 12);
  });

  it('finds a kink, and one that sits across the beginning of the turn', () => {
    const found = least([(angle) => Math.abs(Math.sin((angle + 0.01) / 2))]);
    expect(found.angle).toBeCloseTo(TURN - 0.01, 5);
    expect(found.value).toBeLessThan(1e-6);
  });

  it('takes the pair that dips lowest between samples, though another is lower at them', () => {
    const step = TURN / FIT_SAMPLES;
    const sharp = (angle: number) => 10 * Math.abs(Math.sin((angle - 20.5 * step) / 2)) + 0.05;
    const flat = () => 0.1;
    expect(least([flat, sharp])).toMatchObject({ pair: 1 });
    expect(least([flat, sharp]).value).toBeCloseTo(0.05, 5);
  });
});
