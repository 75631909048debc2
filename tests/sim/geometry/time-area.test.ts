import { describe, expect, it } from 'vitest';
import { angleAreas, timeAreas } from '../../../src/sim/geometry/time-area.ts';
import { deg, mm, rpm } from '../../../src/sim/units.ts';
import { built, engineWith, windowGroup } from './workshop.ts';

const top = (depth_mm: number) => ({ top: { kind: 'depth', depth: depth_mm * mm } }) as const;

describe('angleAreas', () => {
  it('matches the closed form for a square window and a rod so long that the motion is a cosine', () => {
    // Window from x = 1.2 r to the bottom, x = r (1 - cos theta): integral of w r (cos theta_o - cos theta) while open.
    // A rod a million cranks long still leaves r/2L = 5e-7 of obliquity.
    const endless = engineWith({
      count: 1,
      knuckle: 0,
      masterRod: 25_000,
      exhaust: [windowGroup(top(30))],
      transfer: [windowGroup(top(40))],
    });
    const opening = Math.acos(1 - 1.2);
    const half = Math.PI - opening;
    const expected = 2 * 10 * mm * 25 * mm * (Math.sin(half) - half * Math.cos(half));
    expect(angleAreas(built(endless).cylinders[0]!).exhaust / expected).toBeCloseTo(1, 6);
  });

  it('agrees with a plain sum over 200 000 angles for rounded windows to 5e-8', () => {
    const groups = {
      exhaust: [
        windowGroup({ ...top(27), width: 18 * mm, cornerRadius: 4 * mm }),
        windowGroup({ ...top(30), count: 2 }),
      ],
      transfer: [windowGroup({ ...top(38), cornerRadius: 5 * mm, floorDepth: 49 * mm })],
    };
    const cylinder = built(engineWith(groups)).cylinders[2]!;
    const sums = { exhaust: 0, scavenge: 0, blowdown: 0 };
    const n = 200_000;
    const step = (2 * Math.PI) / n;
    for (let i = 0; i < n; i++) {
      const after = (i + 0.5) * step;
      cylinder.travel.evaluate(cylinder.tdc + after);
      const depth = cylinder.depthAtTdc + cylinder.travel.value;
      sums.exhaust += step * cylinder.exhaust.area(depth);
      sums.scavenge += step * cylinder.transfer.area(depth);
      if (after < cylinder.transfer.opensAfterOwnTdc) sums.blowdown += step * cylinder.exhaust.area(depth);
    }
    const found = angleAreas(cylinder);
    expect(found.exhaust / sums.exhaust).toBeCloseTo(1, 7);
    expect(found.scavenge / sums.scavenge).toBeCloseTo(1, 7);
    // The sum itself misses the end of blowdown by up to half a step, 4e-5 of its 20 degrees.
    expect(Math.abs(found.blowdown / sums.blowdown - 1)).toBeLessThan(1e-4);
  });

  it('has no blowdown where the transfer opens before the exhaust', () => {
    const early = engineWith({ exhaust: [windowGroup(top(36))], transfer: [windowGroup(top(30))] });
    for (const cylinder of built(early).cylinders) expect(angleAreas(cylinder).blowdown).toBe(0);
  });

  it('differs between articulated cylinders with equal windows: by more than 20 % in blowdown', () => {
    const blowdowns = built(engineWith()).cylinders.map((one) => angleAreas(one).blowdown);
    expect(Math.max(...blowdowns) / Math.min(...blowdowns)).toBeGreaterThan(1.2);
  });
});

describe('timeAreas', () => {
  it('divides by speed and swept volume: twice the speed, half the time', () => {
    const cylinder = built(engineWith()).cylinders[1]!;
    const slow = timeAreas(cylinder, 3000 * rpm);
    const fast = timeAreas(cylinder, 6000 * rpm);
    expect(slow.scavenge / fast.scavenge).toBeCloseTo(2, 13);
    expect(fast.exhaust * 6000 * rpm * cylinder.sweptVolume).toBeCloseTo(angleAreas(cylinder).exhaust, 15);
  });

  it('falls in the published order of magnitude for a high-speed cylinder: exhaust about 0.014 s m²/m³ at 10 000 rpm', () => {
    // Jennings, Two-stroke Tuner's Handbook, 1973: 0.00014-0.00015 s cm²/cm³ = 0.014-0.015 s m²/m³ for exhaust windows.
    // 125 cc, 54 mm square, one 40 mm wide exhaust window opening at 85 degrees: typical of such engines, so within 25 %.
    const racing = engineWith({
      count: 1,
      crankRadius: 27 * mm,
      masterRod: 110 * mm,
      knuckle: 0,
      cylinder: { bore: 54 * mm },
      exhaust: [
        windowGroup({
          width: 40 * mm,
          cornerRadius: 5 * mm,
          top: { kind: 'angle', opensAfterTdc: 85 * deg },
        }),
      ],
      transfer: [windowGroup({ top: { kind: 'angle', opensAfterTdc: 115 * deg } })],
    });
    const { exhaust } = timeAreas(built(racing).cylinders[0]!, 10_000 * rpm);
    expect(exhaust).toBeGreaterThan(0.75 * 0.014);
    expect(exhaust).toBeLessThan(1.25 * 0.015);
  });
});
