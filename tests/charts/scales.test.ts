import { describe, expect, it } from 'vitest';
import {
  axisScale,
  extentOf,
  leftMargin,
  linearScale,
  roomyDomain,
  ticksAlong,
  turnTicks,
  tickWriter,
  valueAt,
} from '../../src/charts/scales.ts';

describe('extentOf', () => {
  it('spans the finite figures of all columns and passes over NaN, null and infinity', () => {
    expect(extentOf([[3, NaN, 5], Float64Array.of(-1, Infinity), [null, 4]])).toEqual([-1, 5]);
  });

  it('is null without a finite figure', () => {
    expect(extentOf([[], [NaN, null]])).toBeNull();
  });
});

describe('axisScale', () => {
  it('keeps the stretch that the axis fixes, whatever the figures are', () => {
    expect(axisScale({ domain: [0, 360], include: [900] }, [100, 500], [0, 1]).domain()).toEqual([0, 360]);
  });

  it('else spans the figures and what the axis must take in, with room beyond the figures alone', () => {
    const scale = axisScale({ include: [0] }, [2, 10], [200, 20], 0.1);
    expect(scale.domain()).toEqual([0, 11]);
    expect(scale.range()).toEqual([200, 20]);
  });
});

describe('roomyDomain', () => {
  it('leaves 5 % beyond the figures but none beyond a value it was told to include', () => {
    expect(roomyDomain([2, 10], [0])).toEqual([0, 10.5]);
  });

  it('opens about a single value, also about 0, and is 0 to 1 for nothing', () => {
    expect(roomyDomain([5, 5])).toEqual([4.5, 5.5]);
    expect(roomyDomain([0, 0])).toEqual([-0.5, 0.5]);
    expect(roomyDomain(null)).toEqual([0, 1]);
  });
});

describe('valueAt', () => {
  it('is the value drawn at a place, and that of the nearer end beyond the scale', () => {
    const scale = linearScale([500, 9500], [46, 346]);
    expect([0, 46, 196, 346, 400].map((place) => valueAt(scale, place))).toEqual([
      500, 500, 5000, 9500, 9500,
    ]);
  });
});

describe('ticksAlong', () => {
  it('marks round values, about one for every 50 px, upwards in pixels too', () => {
    expect(ticksAlong(linearScale([0, 1], [200, 0]), 50)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
  });
});

describe('leftMargin', () => {
  it('keeps its usual 46 px for short marks and grows for long ones', () => {
    expect(leftMargin(linearScale([0, 300], [200, 0]), {})).toBe(46);
    expect(leftMargin(linearScale([-2e-5, 0], [200, 0]), {})).toBeGreaterThan(60);
    expect(leftMargin(linearScale([0, 1], [200, 0]), { format: () => 'a hundred' })).toBeGreaterThan(60);
  });
});

describe('turnTicks', () => {
  it('marks one turn every 30° on a wide chart and every 90° on a narrow one', () => {
    expect(turnTicks(360, 1200, 60)).toHaveLength(13);
    expect(turnTicks(360, 300, 60)).toEqual([0, 90, 180, 270, 360]);
  });

  it('ends on the last whole step of 4 turns', () => {
    const ticks = turnTicks(1440, 400, 60);
    expect(ticks[0]).toBe(0);
    expect(ticks.at(-1)).toBe(1440);
  });
});

describe('tickWriter', () => {
  const written = (low: number, high: number): string[] => {
    const scale = linearScale([low, high], [0, 100]);
    const ticks = scale.ticks(3);
    return ticks.map(tickWriter(scale, 3));
  };

  it('writes thousands without grouping and keeps the places that the step asks for', () => {
    expect(written(0, 2000)).toEqual(['0', '500', '1000', '1500', '2000']);
    expect(written(0, 0.1)).toEqual(['0', '0.05', '0.10']);
  });

  it('takes a power of ten from a million on and below a thousandth, and a true minus', () => {
    expect(written(0, 1e9)).toEqual(['0', '5×10⁸', '1×10⁹']);
    expect(written(-2e-5, 0)).toEqual(['−2×10⁻⁵', '−1.5×10⁻⁵', '−1×10⁻⁵', '−5×10⁻⁶', '0']);
  });
});
