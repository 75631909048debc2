import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/charts/engine-shapes.ts';
import { pitchRadius, rotorAngles, rotorOutline } from '../../src/charts/rotor-outline.ts';
import { cycloidDisplacement } from '../../src/sim/blower/cycloid-rotors.ts';

const area = (corners: readonly Place[]): number =>
  corners.reduce((sum, { x, y }, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return sum + 0.5 * (x * next.y - next.x * y);
  }, 0);
const radii = (corners: readonly Place[]): number[] => corners.map(({ x, y }) => Math.hypot(x, y));

/** Radius of the outline in a direction, between its corners. */
function radiusAt(corners: readonly Place[], direction: number): number {
  const turn = 2 * Math.PI;
  const places = corners
    .map(({ x, y }) => ({ at: (((Math.atan2(y, x) - direction) % turn) + turn) % turn, r: Math.hypot(x, y) }))
    .sort((a, b) => a.at - b.at);
  const after = places[0]!;
  const before = places.at(-1)!;
  const share = (turn - before.at) / (turn - before.at + after.at);
  return before.r + share * (after.r - before.r);
}

describe('rotorOutline', () => {
  it.each([2, 3, 4])('encloses the section that the displacement of %i lobes is worked out from', (lobes) => {
    const tip = 0.0285;
    const section = Math.PI * tip * tip - cycloidDisplacement(2 * tip, 1, lobes) / 2;
    expect(area(rotorOutline(tip, lobes, 1600)) / section).toBeCloseTo(1, 5);
  });

  it.each([2, 3, 4])('reaches the tip radius on %i lobes, the first along +x, and no further', (lobes) => {
    const outline = rotorOutline(1, lobes);
    const atTip = outline.filter(({ x, y }) => Math.hypot(x, y) > 1 - 1e-12);
    expect(atTip.length).toBe(lobes);
    expect(atTip[0]!.x).toBeCloseTo(1, 12);
    expect(Math.max(...radii(outline))).toBeLessThan(1 + 1e-12);
    expect(Math.min(...radii(outline))).toBeCloseTo(1 - (2 * pitchRadius(1, lobes)) / lobes, 12);
  });
});

describe('rotorAngles', () => {
  it.each([2, 3, 4])(
    'keeps two rotors of %i lobes touching, without one cutting into the other, at 24 angles',
    (lobes) => {
      const outline = rotorOutline(1, lobes, 60);
      const distance = 2 * pitchRadius(1, lobes);
      for (let step = 0; step < 24; step++) {
        const [left, right] = rotorAngles((step * Math.PI) / 12 + 0.1, lobes);
        // The corners of the right rotor, seen from the axis of the left one, and how far out of it they lie.
        const gaps = outline
          .map(({ x, y }) => ({
            x: distance + x * Math.cos(right) - y * Math.sin(right),
            y: x * Math.sin(right) + y * Math.cos(right),
          }))
          .filter(({ x, y }) => Math.hypot(x, y) < 1.02)
          .map(({ x, y }) => Math.hypot(x, y) - radiusAt(outline, Math.atan2(y, x) - left));
        expect(Math.min(...gaps)).toBeGreaterThan(-0.005);
        expect(Math.min(...gaps)).toBeLessThan(0.01);
      }
    },
  );
});
