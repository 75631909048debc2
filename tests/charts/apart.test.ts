import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placesApart } from '../../src/charts/places-apart.ts';
import { spokesApart } from '../../src/charts/spokes-apart.ts';

describe('placesApart', () => {
  it('leaves points alone that do not touch, and moves the second of two in one place to its right', () => {
    expect(
      placesApart(
        [
          { x: 0, y: 0 },
          { x: 30, y: 0 },
        ],
        20,
      ),
    ).toEqual([
      { x: 0, y: 0 },
      { x: 30, y: 0 },
    ]);
    expect(
      placesApart(
        [
          { x: 5, y: 5 },
          { x: 5, y: 5 },
        ],
        20,
      ),
    ).toEqual([
      { x: 5, y: 5 },
      { x: 25, y: 5 },
    ]);
  });

  it('keeps every two at least the gap apart and every height as it was', () => {
    const spot = fc.record({ x: fc.integer({ min: 0, max: 100 }), y: fc.integer({ min: 0, max: 40 }) });
    fc.assert(
      fc.property(fc.array(spot, { maxLength: 14 }), (points) => {
        const placed = placesApart(points, 19);
        placed.forEach((a, i) => {
          expect(a.y).toBe(points[i]!.y);
          placed.slice(0, i).forEach((b) => expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(18.99));
        });
      }),
      { seed: 8 },
    );
  });
});

describe('spokesApart', () => {
  it('turns the second of two spokes at one angle on by the gap, and leaves others where they are', () => {
    expect(spokesApart([0, 1, 0], 0.2)).toEqual([0, 1, 0.2]);
  });
});
