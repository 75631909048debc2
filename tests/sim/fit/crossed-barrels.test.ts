import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundBarrelGap, squareBarrelGap } from '../../../src/sim/fit/crossed-barrels.ts';

type Vector = readonly [number, number, number];

/** Outer edge of a barrel's lower end: axis at `angle` in the plane of its row, which stands at z. */
function rim(
  angle: number,
  z: number,
  from: number,
  points: readonly (readonly [number, number])[],
): Vector[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return points.map(([across, along]) => [from * cos - across * sin, from * sin + across * cos, z + along]);
}
const distance = ([a, b, c]: Vector, [x, y, z]: Vector): number => Math.hypot(a - x, b - y, c - z);
const nearest = (one: readonly Vector[], other: readonly Vector[]): number =>
  one.reduce((least, p) => other.reduce((least2, q) => Math.min(least2, distance(p, q)), least), Infinity);

const circle = (diameter: number, count: number): [number, number][] =>
  Array.from({ length: count }, (_, k) => {
    const t = (2 * Math.PI * k) / count;
    return [(diameter / 2) * Math.cos(t), (diameter / 2) * Math.sin(t)];
  });
const rectangle = (across: number, along: number, count: number): [number, number][] =>
  Array.from({ length: count + 1 }, (_, k) => -0.5 + k / count).flatMap((t): [number, number][] => [
    [across * t, along / 2],
    [across * t, -along / 2],
    [across / 2, along * t],
    [-across / 2, along * t],
  ]);

const anyPlace = fc.record({
  angle: fc.double({ min: 0.3, max: 2.5, noNaN: true }),
  apart: fc.double({ min: 20, max: 90, noNaN: true }),
  from: fc.double({ min: 40, max: 120, noNaN: true }),
});

describe('roundBarrelGap', () => {
  it('is the least distance of points round two lower ends in space, where they are apart', () => {
    fc.assert(
      fc.property(anyPlace, (place) => {
        const exact = roundBarrelGap(place, 40);
        fc.pre(exact > 0);
        const points = circle(40, 240);
        const found = nearest(
          rim(0, 0, place.from, points),
          rim(place.angle, place.apart, place.from, points),
        );
        // Two rims points 0.52 apart, at most 0.26 each, of which only the second order counts.
        expect(found).toBeGreaterThan(exact - 1e-9);
        expect(found).toBeLessThan(exact + 0.26 ** 2 / exact + 1e-2);
      }),
      { seed: 5, numRuns: 12 },
    );
  });

  it('is 2 (h sin φ/2 − R cos φ/2) in one row, and s − 2 R for barrels behind one another', () => {
    const angle = (2 * Math.PI) / 7;
    const flat = 2 * (91.5 * Math.sin(angle / 2) - 38 * Math.cos(angle / 2));
    expect(roundBarrelGap({ angle, apart: 0, from: 91.5 }, 76)).toBeCloseTo(flat, 9);
    expect(roundBarrelGap({ angle: 0, apart: 60, from: 91.5 }, 76)).toBeCloseTo(-16, 9);
    expect(roundBarrelGap({ angle: 0, apart: 80, from: 91.5 }, 76)).toBeCloseTo(4, 9);
  });
});

describe('squareBarrelGap', () => {
  it('is the least distance of points round two lower ends in space, where they are apart', () => {
    fc.assert(
      fc.property(anyPlace, (place) => {
        const exact = squareBarrelGap(place, 36, 28);
        fc.pre(exact > 0);
        const points = rectangle(36, 28, 60);
        const found = nearest(
          rim(0, 0, place.from, points),
          rim(place.angle, place.apart, place.from, points),
        );
        expect(found).toBeGreaterThan(exact - 1e-9);
        expect(found).toBeLessThan(exact + 0.6);
      }),
      { seed: 6, numRuns: 12 },
    );
  });
});
