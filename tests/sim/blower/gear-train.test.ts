import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GearStage } from '../../../src/sim/engine.ts';
import { gearRatio, gearWarnings, periodTurns, trainEfficiency } from '../../../src/sim/blower/gear-train.ts';

const stage = (driverTeeth: number, drivenTeeth: number, efficiency = 0.98): GearStage => ({
  driverTeeth,
  drivenTeeth,
  efficiency,
});

describe('gearRatio', () => {
  it('is the exact product of the stages in lowest terms: 60/21 x 35/50 = 2/1', () => {
    expect(gearRatio([stage(60, 21), stage(35, 50)])).toEqual({ numerator: 2, denominator: 1 });
    expect(gearRatio([stage(41, 20)])).toEqual({ numerator: 41, denominator: 20 });
  });

  it('is 1/1 without gears', () => {
    expect(gearRatio([])).toEqual({ numerator: 1, denominator: 1 });
  });
});

describe('periodTurns', () => {
  it.each([
    [{ numerator: 2, denominator: 1 }, 2, 1],
    [{ numerator: 41, denominator: 20 }, 2, 5], // 4 x 41/20 = 41/5 pulses a turn
    [{ numerator: 41, denominator: 20 }, 3, 10],
    [{ numerator: 13, denominator: 6 }, 3, 1],
    [{ numerator: 31, denominator: 17 }, 2, 17],
  ])('of ratio %o with %d lobes is %d turns', (ratio, lobes, turns) => {
    expect(periodTurns(ratio, lobes)).toBe(turns);
  });

  it('is the smallest whole number that makes the pulses whole, for any teeth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 90 }),
        fc.integer({ min: 8, max: 90 }),
        fc.integer({ min: 2, max: 4 }),
        (driver, driven, lobes) => {
          const ratio = gearRatio([stage(driver, driven)]);
          const whole = (turns: number) => (2 * lobes * ratio.numerator * turns) % ratio.denominator === 0;
          const P = periodTurns(ratio, lobes);
          expect(whole(P)).toBe(true);
          for (let turns = 1; turns < P; turns++) expect(whole(turns)).toBe(false);
        },
      ),
    );
  });
});

describe('trainEfficiency', () => {
  it('multiplies: 0.98 twice is 0.9604, none is 1', () => {
    expect(trainEfficiency([stage(40, 20), stage(20, 20)])).toBeCloseTo(0.9604, 12);
    expect(trainEfficiency([])).toBe(1);
  });
});

describe('gearWarnings', () => {
  it('names a pair with a wheel of fewer than 8 teeth, and a step above 6, and leaves 8 teeth and exactly 6 alone', () => {
    expect(gearWarnings([stage(48, 8), stage(20, 20)])).toEqual([]);
    const [few, steep] = gearWarnings([stage(20, 20), stage(7, 49)]);
    expect(few).toMatchObject({ stage: 1 });
    expect(few!.message).toContain('a wheel of 7 teeth');
    expect(steep!.message).toContain('steps by 7.00 at once');
  });
});
