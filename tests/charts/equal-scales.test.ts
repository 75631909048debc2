import { describe, expect, it } from 'vitest';
import { equalScales, ringRadii } from '../../src/charts/equal-scales.ts';

const room = { left: 10, right: 410, top: 20, bottom: 220 };

describe('equalScales', () => {
  it('is as long to the right as up, and takes in every point and the origin', () => {
    const { x, y } = equalScales([[100, 500]], [[-3000, -1000]], room);
    expect(x(1) - x(0)).toBeCloseTo(y(0) - y(1), 12);
    for (const [px, py] of [
      [0, 0],
      [100, -3000],
      [500, -1000],
    ] as const) {
      expect(x(px)).toBeGreaterThanOrEqual(room.left - 1e-9);
      expect(x(px)).toBeLessThanOrEqual(room.right + 1e-9);
      expect(y(py)).toBeGreaterThanOrEqual(room.top - 1e-9);
      expect(y(py)).toBeLessThanOrEqual(room.bottom + 1e-9);
    }
    expect(y(0)).toBeCloseTo(room.top, 9);
    expect(y(-3000)).toBeCloseTo(room.bottom, 9);
  });

  it('stands where there is nothing to draw', () => {
    const { x, y } = equalScales([[NaN]], [[]], room);
    expect([x(0), y(0)]).toEqual([210, 120]);
  });
});

describe('ringRadii', () => {
  it('are round, rise, and stand some 50 px apart', () => {
    const { x, y } = equalScales([[-4000, 4000]], [[-2000, 2000]], room);
    const radii = ringRadii(x, y, 50);
    expect(radii[0]).toBe(1000);
    expect(radii.map((radius, i) => radius - (radii[i - 1] ?? 0))).toEqual(radii.map(() => 1000));
  });
});
