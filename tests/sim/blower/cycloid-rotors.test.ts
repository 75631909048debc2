import { describe, expect, it } from 'vitest';
import { cycloidDisplacement, cycloidRipple } from '../../../src/sim/blower/cycloid-rotors.ts';
import { inch, litre } from '../../../src/sim/units.ts';

/** Area of a cycloidal rotor of pitch radius 1 from its drawn outline: shoelace over tips and roots. */
function drawnRotorArea(lobes: number): number {
  const a = 1 / (2 * lobes);
  const points: [number, number][] = [];
  const perArc = 20_000;
  for (let arc = 0; arc < 2 * lobes; arc++)
    for (let i = 0; i < perArc; i++) {
      const roll = ((arc + i / perArc) * Math.PI) / lobes; // angle of the contact point on the pitch circle
      const spin = roll / a;
      points.push(
        arc % 2 === 0
          ? [
              (1 + a) * Math.cos(roll) - a * Math.cos(roll + spin),
              (1 + a) * Math.sin(roll) - a * Math.sin(roll + spin),
            ]
          : [
              (1 - a) * Math.cos(roll) + a * Math.cos(roll - spin),
              (1 - a) * Math.sin(roll) + a * Math.sin(roll - spin),
            ],
      );
    }
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

describe('cycloidDisplacement', () => {
  it('of two lobes is one tip cylinder a turn, of three 0.8125, of four 0.68', () => {
    const cylinder = (Math.PI / 4) * 0.1 ** 2 * 0.12;
    for (const [lobes, share] of [
      [2, 1],
      [3, 0.8125],
      [4, 0.68],
    ])
      expect(cycloidDisplacement(0.1, 0.12, lobes) / cylinder).toBeCloseTo(share, 12);
  });

  it('is twice what outlines rolled out point by point leave of their tip circles, to 1e-6', () => {
    for (const lobes of [2, 3, 4]) {
      const tip = 1 + 1 / lobes;
      const drawn = 2 * (Math.PI * tip * tip - drawnRotorArea(lobes));
      expect(Math.abs(cycloidDisplacement(2 * tip, 1, lobes) / drawn - 1)).toBeLessThan(1e-6);
    }
  });

  it('finds 12.78 litres for 9.5 in by 11 in, 13 % under the 0.51 cu ft that Ware (NACA TR 230) measured', () => {
    const cycloids = cycloidDisplacement(9.5 * inch, 11 * inch, 2);
    expect(cycloids / litre).toBeCloseTo(12.78, 2);
    expect((0.51 * (12 * inch) ** 3) / cycloids).toBeCloseTo(1.13, 2);
  });
});

describe('cycloidRipple', () => {
  it('is 1/9, 1/13, 1/17 for 2, 3, 4 lobes', () => {
    expect([2, 3, 4].map(cycloidRipple)).toEqual([1 / 9, 1 / 13, 1 / 17]);
  });
});

describe('a Roots blower without leaks', () => {
  // Square indicator diagram: work = V dp; isentropic work and temperature of an ideal gas of gamma 1.4.
  const gamma = 1.4;
  const isentropicShare = (pr: number) =>
    ((gamma / (gamma - 1)) * (pr ** ((gamma - 1) / gamma) - 1)) / (pr - 1);
  it.each([
    [1.2, 0.936, 1.057],
    [1.5, 0.86, 1.143],
    [2.0, 0.767, 1.286],
  ])('at pressure ratio %d reaches efficiency %d and heats by %d', (pr, efficiency, heating) => {
    const V = cycloidDisplacement(0.1, 0.1, 2);
    const [p1, T1, R] = [1e5, 300, 287];
    const work = V * (pr - 1) * p1;
    const mass = (p1 * V) / (R * T1);
    const cp = (gamma * R) / (gamma - 1);
    expect(1 + work / (mass * cp * T1)).toBeCloseTo(heating, 3);
    expect((mass * cp * T1 * (pr ** ((gamma - 1) / gamma) - 1)) / work).toBeCloseTo(efficiency, 3);
    expect(isentropicShare(pr)).toBeCloseTo(efficiency, 3);
  });
});
