import { describe, expect, it } from 'vitest';
import { lobeArc } from '../../../../src/sim/blower/rotors/circular-arc-profile.ts';
import { fullCycloidTipRadius, halfPitch } from '../../../../src/sim/blower/rotors/profile.ts';
import { largestTipRadius, sectionFault } from '../../../../src/sim/blower/rotors/section-fault.ts';
import { LOBES, SECTIONS, nameOf, sectionAt } from './sections.ts';

const named = SECTIONS.map((section) => [nameOf(section), section] as const);

describe('halfPitch', () => {
  it.each(named)('%s: runs from the tip to the root without a jump in place or normal', (_, section) => {
    const pieces = halfPitch(section);
    const { lobes, tipRadius, pitchRadius } = section;
    const tip = pieces[0]!(0);
    expect([tip.x / tipRadius, tip.y, tip.nx]).toEqual([1, 0, 1].map((x) => expect.closeTo(x, 12)));
    const root = pieces.at(-1)!(1);
    expect(Math.hypot(root.x, root.y) / (2 * pitchRadius - tipRadius)).toBeCloseTo(1, 10);
    expect(Math.atan2(root.y, root.x)).toBeCloseTo(Math.PI / lobes, 10);
    for (let i = 1; i < pieces.length; i++) {
      const [end, start] = [pieces[i - 1]!(1), pieces[i]!(0)];
      for (const key of ['x', 'y', 'nx', 'ny', 'pitchAngle'] as const)
        expect(end[key]).toBeCloseTo(start[key], 10);
    }
  });

  it.each(named)(
    '%s: has normals across its tangents, which meet the pitch circle where they say',
    (_, section) => {
      const step = 1e-6;
      for (const piece of halfPitch(section))
        for (const t of [0.05, 0.3, 0.5, 0.8, 0.95]) {
          const [a, b, p] = [piece(t - step), piece(t + step), piece(t)];
          const [tx, ty] = [b.x - a.x, b.y - a.y];
          const length = Math.hypot(tx, ty);
          expect(Math.hypot(p.nx, p.ny)).toBeCloseTo(1, 12);
          if (length < 1e-12) continue; // a land of no width
          expect((tx * p.nx + ty * p.ny) / length).toBeCloseTo(0, 5);
          expect((tx * -p.ny + ty * p.nx) / length).toBeGreaterThan(0.99);
          const [ix, iy] = [
            section.pitchRadius * Math.cos(p.pitchAngle) - p.x,
            section.pitchRadius * Math.sin(p.pitchAngle) - p.y,
          ];
          expect((ix * p.ny - iy * p.nx) / section.pitchRadius).toBeCloseTo(0, 9);
        }
    },
  );
});

describe('largestTipRadius', () => {
  it('is 3/2, 4/3 and 5/4 of the pitch radius for cycloids of 2, 3 and 4 lobes', () => {
    for (const lobes of LOBES) {
      expect(sectionAt('cycloidal', lobes, 1).tipRadius / 0.02).toBeCloseTo(1 + 1 / lobes, 10);
      expect(fullCycloidTipRadius(1, lobes)).toBe(1 + 1 / lobes);
    }
  });

  it('puts the arc’s centre at 0.9288 and 0.9670 of the pitch radius for 2 and 3 lobes, the limits of Litvin & Fuentes (2004, ch. 13)', () => {
    for (const [lobes, limit] of [
      [2, 0.9288],
      [3, 0.967],
    ] as const) {
      const { b } = lobeArc(sectionAt('circular arc', lobes, 1));
      expect(b / 0.02).toBeCloseTo(limit, 3);
    }
  });
});

describe('sectionFault', () => {
  it('accepts every section up to the largest', () => {
    for (const section of SECTIONS) expect(sectionFault(section)).toBeNull();
  });

  it('says where cycloids of 2 lobes with a tip of 1.55 collide: each arch needs 99° of the pitch circle and has 90°', () => {
    const found = sectionFault({ profile: 'cycloidal', lobes: 2, tipRadius: 0.031, pitchRadius: 0.02 });
    expect(found?.reason).toContain('each needs 99.0° of it and has 90.0°');
    expect(found?.allowed[1]).toBeCloseTo(0.03, 10);
  });

  it('says where an arc that is too long cuts the other rotor’s hollow away, inside its pitch circle', () => {
    const section = { profile: 'circular arc', lobes: 2, tipRadius: 0.034, pitchRadius: 0.02 } as const;
    const [, radius] = /hollow away ([\d.]+) mm/.exec(sectionFault(section)!.reason)!;
    expect(Number(radius)).toBeGreaterThan(20 - 14);
    expect(Number(radius)).toBeLessThan(20);
    expect(largestTipRadius(section)).toBeLessThan(0.034);
  });

  it('refuses tips that do not reach the other rotor', () => {
    const section = { profile: 'circular arc', lobes: 3, tipRadius: 0.02, pitchRadius: 0.02 } as const;
    expect(sectionFault(section)?.reason).toContain('do not reach');
  });
});
