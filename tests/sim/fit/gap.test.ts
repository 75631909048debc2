import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contactPoints } from '../../../src/sim/fit/contact.ts';
import { gap } from '../../../src/sim/fit/gap.ts';
import type { RoundedShape } from '../../../src/sim/fit/rounded-shape.ts';

const shape = (points: readonly (readonly [number, number])[], radius = 0): RoundedShape => ({
  x: Float64Array.from(points, ([x]) => x),
  y: Float64Array.from(points, ([, y]) => y),
  radius,
});

/** A point, a segment or a convex polygon with corners on an ellipse, somewhere within a few units. */
const anyShape = fc
  .record({
    angles: fc.uniqueArray(fc.integer({ min: 0, max: 35 }), { minLength: 1, maxLength: 6 }),
    x: fc.double({ min: -3, max: 3, noNaN: true }),
    y: fc.double({ min: -3, max: 3, noNaN: true }),
    a: fc.double({ min: 0.2, max: 2, noNaN: true }),
    b: fc.double({ min: 0.2, max: 2, noNaN: true }),
    radius: fc.constantFrom(0, 0, 0.3, 1),
  })
  .map(({ angles, x, y, a, b, radius }) =>
    shape(
      angles
        .sort((one, other) => one - other)
        .map((k): [number, number] => {
          const angle = (k * Math.PI) / 18;
          return [x + a * Math.cos(angle), y + b * Math.sin(angle)];
        }),
      radius,
    ),
  );

const reach = ({ x, y, radius }: RoundedShape, nx: number, ny: number): number =>
  Math.max(...Array.from(x, (value, i) => value * nx + y[i]! * ny)) + radius;

/** Largest separation over directions: the gap of convex shapes, by their supports alone. Never more than the gap. */
function scannedGap(a: RoundedShape, b: RoundedShape, directions: number): number {
  let most = -Infinity;
  for (let k = 0; k < directions; k++) {
    const angle = (2 * Math.PI * k) / directions;
    const [nx, ny] = [Math.cos(angle), Math.sin(angle)];
    most = Math.max(most, -reach(a, nx, ny) - reach(b, -nx, -ny));
  }
  return most;
}

/** Points along the edge of a core. */
const edgePoints = ({ x, y }: RoundedShape): [number, number][] =>
  Array.from(x).flatMap((_, i) => {
    const j = (i + 1) % x.length;
    return Array.from({ length: 40 }, (__, k): [number, number] => [
      x[i]! + ((x[j]! - x[i]!) * k) / 40,
      y[i]! + ((y[j]! - y[i]!) * k) / 40,
    ]);
  });

describe('gap', () => {
  it('is the largest separation over all directions, whether the shapes overlap or not', () => {
    fc.assert(
      fc.property(anyShape, anyShape, (a, b) => {
        const exact = gap(a, b);
        const scanned = scannedGap(a, b, 1200);
        // A direction is at most pi/1200 off, and no support of these shapes changes faster than 10 units a radian.
        expect(scanned).toBeLessThanOrEqual(exact + 1e-12);
        expect(scanned).toBeGreaterThan(exact - 10 * (Math.PI / 1200));
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it('is the least distance of points along both edges, where they are apart', () => {
    fc.assert(
      fc.property(anyShape, anyShape, (a, b) => {
        const exact = gap(a, b);
        fc.pre(exact > 0);
        let least = Infinity;
        for (const [px, py] of edgePoints(a))
          for (const [qx, qy] of edgePoints(b)) least = Math.min(least, Math.hypot(px - qx, py - qy));
        const sampled = least - a.radius - b.radius;
        expect(sampled).toBeGreaterThanOrEqual(exact - 1e-12);
        expect(sampled).toBeLessThan(exact + 4 / 40);
      }),
      { seed: 2, numRuns: 15 },
    );
  });

  it('has no side: the gap of b and a is that of a and b', () => {
    fc.assert(
      fc.property(anyShape, anyShape, (a, b) => {
        expect(gap(b, a)).toBeCloseTo(gap(a, b), 12);
      }),
      { seed: 3 },
    );
  });

  it('is 3 for circles of radius 1 with centres 5 apart, -1 for a segment through a circle of radius 1', () => {
    expect(gap(shape([[0, 0]], 1), shape([[3, 4]], 1))).toBeCloseTo(3, 14);
    const across = shape([
      [-5, 0],
      [5, 0],
    ]);
    expect(gap(across, shape([[0, 0]], 1))).toBeCloseTo(-1, 14);
    expect(gap(across, shape([[7, 0]], 1))).toBeCloseTo(1, 14);
  });
});

describe('contactPoints', () => {
  it('gives two points as far apart as the gap, one on each shape', () => {
    fc.assert(
      fc.property(anyShape, anyShape, (a, b) => {
        const distance = gap(a, b);
        fc.pre(distance > 1e-6);
        const points = contactPoints(a, b, distance);
        expect(Math.hypot(points.a.x - points.b.x, points.a.y - points.b.y)).toBeCloseTo(distance, 9);
        expect(gap(a, shape([[points.a.x, points.a.y]]))).toBeCloseTo(0, 9);
        expect(gap(b, shape([[points.b.x, points.b.y]]))).toBeCloseTo(0, 9);
      }),
      { seed: 4 },
    );
  });

  it('points into what two overlapping polygons share', () => {
    const square = (x: number) =>
      shape([
        [x, 0],
        [x + 2, 0],
        [x + 2, 2],
        [x, 2],
      ]);
    const [a, b] = [square(0), square(1.5)];
    const { a: point } = contactPoints(a, b, gap(a, b));
    expect(point.x).toBeCloseTo(1.75, 12);
    expect(point.y).toBeCloseTo(1, 12);
  });
});
