import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stickingLift } from '../../../src/sim/exchange/sticking-lift.ts';

const CRACK = 70_000;
const FULL = 100_000;
const RESEAT = 61_000;
const after = (pressures: readonly number[], reseat = RESEAT): number =>
  pressures.reduce((held, dp) => stickingLift(dp, CRACK, FULL, reseat, held), 0);

describe('stickingLift', () => {
  it('rises in proportion from 0 at 70 to 1 at 100 kPa, and stays fully open beyond', () => {
    const lifts = [60_000, 70_000, 85_000, 100_000, 130_000].map((dp) => after([0, dp]));
    expect(lifts).toEqual([0, 0, 0.5, 1, 1]);
  });

  it('holds on the way down until friction gives way 9 kPa lower, and shuts at 61 kPa', () => {
    const lifts = [91_001, 91_000, 76_000, 61_000, 0].map((dp) => after([130_000, dp]));
    expect(lifts[0]).toBe(1);
    expect(lifts[1]).toBeCloseTo(1, 12);
    expect(lifts.slice(2)).toEqual([0.5, 0, 0]);
  });

  it('stays where it is while pressure turns within the band', () => {
    expect(after([85_000, 80_000, 84_000, 77_000])).toBe(0.5);
  });

  it('without friction is the line of the spring, whatever came before', () => {
    const pressure = fc.double({ min: 0, max: 150_000, noNaN: true });
    fc.assert(
      fc.property(fc.array(pressure), pressure, (before, dp) => {
        expect(after([...before, dp], CRACK)).toBe(after([dp], CRACK));
      }),
    );
  });

  it('takes from the gas, round a loop from shut to open and back, twice the friction times the lift: it can drive no swing', () => {
    const steps = 20_000;
    let [held, before, work] = [0, 0, 0];
    for (let i = 1; i <= steps; i++) {
      const dp = 130_000 * Math.sin((Math.PI * i) / steps);
      const lift = stickingLift(dp, CRACK, FULL, RESEAT, held);
      work += 0.5 * (dp + before) * (lift - held);
      [held, before] = [lift, dp];
    }
    expect(held).toBe(0);
    expect(work / (CRACK - RESEAT)).toBeCloseTo(1, 3);
  });
});
