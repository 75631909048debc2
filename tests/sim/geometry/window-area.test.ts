import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundedWindowArea } from '../../../src/sim/geometry/window-area.ts';
import { WindowProfile } from '../../../src/sim/geometry/window-profile.ts';
import { clearWidth, developedWidth, slantFactor } from '../../../src/sim/geometry/window-width.ts';
import { deg, mm, mm2 } from '../../../src/sim/units.ts';
import { referenceRows, windowGroup } from './workshop.ts';
import { uniform } from './uniform.ts';

const anyWindow = fc
  .record({
    width: uniform(0.001, 0.05),
    height: uniform(0.001, 0.03),
    roundness: uniform(0, 1),
  })
  .map(({ width, height, roundness }) => ({
    width,
    height,
    radius: 0.5 * roundness * Math.min(width, height),
  }));

describe('roundedWindowArea', () => {
  it.each(referenceRows('window.csv').map(([e, area]): [number, number] => [e!, area!]))(
    'uncovers, %d mm below the top of a 14 by 10 mm window with 3 mm corners, %d mm²',
    (e_mm, area_mm2) => {
      expect(roundedWindowArea(14 * mm, 10 * mm, 3 * mm, e_mm * mm) / mm2).toBeCloseTo(area_mm2, 6);
    },
  );

  it('is w e for square corners', () => {
    expect(roundedWindowArea(14 * mm, 10 * mm, 0, 4 * mm) / mm2).toBeCloseTo(56, 12);
    expect(roundedWindowArea(14 * mm, 10 * mm, 0, 1e-12)).toBeCloseTo(14 * mm * 1e-12, 20);
  });

  it('is a circle for corners of half a square: pi r² when open, half of it at the middle', () => {
    expect(roundedWindowArea(10 * mm, 10 * mm, 5 * mm, 10 * mm) / mm2).toBeCloseTo(25 * Math.PI, 10);
    expect(roundedWindowArea(10 * mm, 10 * mm, 5 * mm, 5 * mm) / mm2).toBeCloseTo(12.5 * Math.PI, 10);
  });

  it('keeps its digits as it opens: between two quarter circles that meet, 4/3 e sqrt(2 c e) at 1e-15 of the radius', () => {
    const e = 5e-18;
    const leading = (4 / 3) * e * Math.sqrt(2 * 5 * mm * e);
    expect(roundedWindowArea(10 * mm, 10 * mm, 5 * mm, e) / leading).toBeCloseTo(1, 13);
  });

  it('is nothing above the top edge and the whole window below the floor', () => {
    expect(roundedWindowArea(14 * mm, 10 * mm, 3 * mm, -1 * mm)).toBe(0);
    const whole = 140 - (4 - Math.PI) * 9;
    expect(roundedWindowArea(14 * mm, 10 * mm, 3 * mm, 60 * mm) / mm2).toBeCloseTo(whole, 12);
  });

  it('grows with the opening, never faster than the width, and what is covered mirrors what is uncovered', () => {
    fc.assert(
      fc.property(
        anyWindow,
        uniform(-0.2, 1.2),
        uniform(0, 0.3),
        ({ width, height, radius }, share, more) => {
          const area = (e: number): number => roundedWindowArea(width, height, radius, e);
          const e = share * height;
          const gain = area(e + more * height) - area(e);
          const roundOff = 1e-15 * width * height;
          expect(area(e)).toBeGreaterThanOrEqual(0);
          expect(gain).toBeGreaterThanOrEqual(-roundOff);
          expect(gain).toBeLessThanOrEqual(width * more * height + roundOff);
          expect(Math.abs(area(e) + area(height - e) - area(height))).toBeLessThanOrEqual(roundOff);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('clearWidth', () => {
  it('takes a chord as it is, less the bridge', () => {
    expect(clearWidth(windowGroup({ width: 20 * mm, bridgeWidth: 3 * mm }), 45 * mm) / mm).toBeCloseTo(
      17,
      12,
    );
  });

  it('turns a width along the bore into its chord: a sixth of the circumference is half the bore', () => {
    const sixth = windowGroup({ width: (Math.PI * 45 * mm) / 6, widthAlong: 'bore circumference' });
    expect(clearWidth(sixth, 45 * mm) / mm).toBeCloseTo(22.5, 12);
  });
});

describe('developedWidth', () => {
  it('undoes the chord: half the bore spans a sixth of the circumference', () => {
    expect(developedWidth(windowGroup({ width: 22.5 * mm }), 45 * mm)).toBeCloseTo(
      (Math.PI * 45 * mm) / 6,
      15,
    );
    expect(developedWidth(windowGroup({ width: 30 * mm, widthAlong: 'bore circumference' }), 45 * mm)).toBe(
      30 * mm,
    );
  });
});

describe('slantFactor', () => {
  it('multiplies the cosines of plan and elevation: 60° and 45° leave 0.35355', () => {
    expect(slantFactor(windowGroup({ planAngle: -60 * deg, elevationAngle: 45 * deg }))).toBeCloseTo(
      0.3535534,
      7,
    );
  });
});

describe('WindowProfile', () => {
  const window = {
    clearWidth: 14 * mm,
    floorDepth: 40 * mm,
    cornerRadius: 3 * mm,
    opensAfterOwnTdc: 1.6,
    closesAfterOwnTdc: 4.7,
  };
  const main = { ...window, count: 2, topDepth: 30 * mm, slantFactor: 0.5 };
  const boost = {
    ...window,
    count: 1,
    topDepth: 32 * mm,
    slantFactor: 1,
    cornerRadius: 0,
    opensAfterOwnTdc: 1.7,
    closesAfterOwnTdc: 4.8,
  };
  const profile = new WindowProfile([main, boost]);

  it('adds the groups, each times its count and slant: 3 mm down 38.137 + 14 mm²', () => {
    // Two windows at half area give one of the reference table (38.137167 mm² at 3 mm); the boost window is open by 1 mm.
    expect(profile.area(33 * mm) / mm2).toBeCloseTo(38.137167 + 14, 6);
  });

  it('is closed down to its highest edge and fully open below its floor', () => {
    expect(profile.area(30 * mm)).toBe(0);
    expect(profile.area(41 * mm) / mm2).toBeCloseTo(132.274334 + 14 * 8, 6);
    expect(profile.fullArea).toBe(profile.area(1));
  });

  it('opens with the first group to open and closes with the last to close', () => {
    expect([profile.opensAfterOwnTdc, profile.closesAfterOwnTdc, profile.topDepth]).toEqual([
      1.6,
      4.8,
      30 * mm,
    ]);
  });
});
