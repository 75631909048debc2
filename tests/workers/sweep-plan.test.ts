import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sweepPlan } from '../../src/workers/sweep-plan.ts';

const at = (speed: number, throttle = 1) => ({ speed, throttle });

describe('sweepPlan', () => {
  it('begins with both ends and goes on from the nearest before it, in the ratio of speeds', () => {
    expect(sweepPlan([100, 110, 120, 130, 140].map((speed) => at(speed)))).toEqual([
      { index: 0, from: null },
      { index: 4, from: 0 },
      { index: 2, from: 4 },
      { index: 1, from: 2 },
      { index: 3, from: 4 },
    ]);
  });

  it('starts cold what is farther than half as fast again, or has another throttle', () => {
    expect(sweepPlan([at(100), at(160)]).map(({ from }) => from)).toEqual([null, null]);
    expect(sweepPlan([at(100, 1), at(101, 0.5)]).map(({ from }) => from)).toEqual([null, null]);
  });

  it('plans every point once, after what it starts from', () => {
    const speed = fc.double({ min: 10, max: 1000, noNaN: true });
    fc.assert(
      fc.property(fc.array(speed, { maxLength: 40 }), (speeds) => {
        const plan = sweepPlan(speeds.map((each) => at(each)));
        expect(plan.map(({ index }) => index).sort((a, b) => a - b)).toEqual(speeds.map((_, i) => i));
        plan.forEach(({ from }, place) => {
          if (from !== null) expect(plan.slice(0, place).map(({ index }) => index)).toContain(from);
        });
      }),
      { seed: 11 },
    );
  });
});
