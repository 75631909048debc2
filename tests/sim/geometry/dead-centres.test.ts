import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deadCentres, largestOffAxis } from '../../../src/sim/geometry/dead-centres.ts';
import { pistonMotion } from '../../../src/sim/geometry/solve-train.ts';
import { TURN, deg, mm } from '../../../src/sim/units.ts';
import { plausibleRow } from './plausible-row.ts';
import { engineWith } from './workshop.ts';
import { uniform } from './uniform.ts';

const motionOf = (count: number, knuckle_mm: number, index: number) => {
  const { train } = engineWith({ count, knuckle: knuckle_mm * mm });
  return pistonMotion(train, train.rows[0]!, index);
};

const aroundZero = (angle: number): number => angle - TURN * Math.round(angle / TURN);

describe('deadCentres', () => {
  // Hand-worked table for crank 25 and rod 95 mm: [cylinders, k_mm, index, top below master's_mm, stroke_mm, top after own axis_deg].
  const table: [number, number, number, number, number, number][] = [
    [5, 24, 1, 0.984, 50.089, 2.7],
    [5, 24, 2, 0.312, 50.301, 3.55],
    [7, 27, 1, 0.796, 50.024, 1.42],
    [7, 27, 2, 1.11, 50.428, 5.36],
    [7, 27, 3, 0.189, 50.29, 3.03],
    [3, 24, 1, 0.722, 50.392, 4.72],
  ];
  it.each(table)(
    'finds, for %i cylinders with k = %d mm, cylinder index %i: top %d mm low, stroke %d mm, top %d° off its axis',
    (count, knuckle_mm, index, low_mm, stroke_mm, late_deg) => {
      const near = deadCentres(motionOf(count, knuckle_mm, index));
      const far = deadCentres(motionOf(count, knuckle_mm, count - index));
      const axis = (index * TURN) / count;
      for (const one of [near, far]) {
        // The table holds to one unit of its last place.
        expect(Math.abs(120 - one.topHeight / mm - low_mm)).toBeLessThan(1e-3);
        expect(Math.abs((one.topHeight - one.bottomHeight) / mm - stroke_mm)).toBeLessThan(1e-3);
      }
      const afterAxis = aroundZero(near.topPin - axis) / deg;
      const farAfterAxis = aroundZero(far.topPin + axis) / deg;
      expect(Math.abs(Math.abs(afterAxis) - late_deg)).toBeLessThan(1e-2);
      expect(farAfterAxis).toBeCloseTo(-afterAxis, 9);
    },
  );

  it('finds bottom dead centre 169.32° after its own axis for the third of five, 169.6° for the second of three', () => {
    const third = deadCentres(motionOf(5, 24, 2));
    expect(third.bottomPin / deg - 144).toBeCloseTo(169.32, 2);
    expect(deadCentres(motionOf(3, 24, 1)).bottomPin / deg - 120).toBeCloseTo(169.6, 1);
  });

  it('finds top at the axis, bottom half a turn on and stroke 2r for a master, to 1e-15', () => {
    const master = deadCentres(motionOf(5, 24, 0));
    expect(Math.abs(master.topPin)).toBeLessThan(1e-15);
    expect(Math.abs(master.bottomPin - Math.PI)).toBeLessThan(1e-15);
    expect(Math.abs(master.topHeight - master.bottomHeight - 50 * mm)).toBeLessThan(1e-16);
  });

  it('gives the highest and the lowest point of any plausible row, zero slope there, and two reversals', () => {
    fc.assert(
      fc.property(plausibleRow, uniform(0, TURN), (some, angle) => {
        const masterRod = some.crankRadius * some.rodOverRadius;
        const { train } = engineWith({
          count: some.count,
          crankRadius: some.crankRadius,
          masterRod,
          knuckle: masterRod * some.knuckleOverRod,
        });
        train.rows[0]!.cylinders.forEach((_, j) => {
          const motion = pistonMotion(train, train.rows[0]!, j);
          const centres = deadCentres(motion);
          expect(centres.reversals).toBe(2);
          expect(centres.bottomPin).toBeGreaterThan(centres.topPin);
          expect(centres.bottomPin).toBeLessThan(centres.topPin + TURN);
          expect(centres.topHeight - centres.bottomHeight).toBeGreaterThan(1.9 * some.crankRadius);
          for (const pin of [centres.topPin, centres.bottomPin]) {
            motion.evaluate(pin);
            expect(Math.abs(motion.slope)).toBeLessThan(1e-15);
          }
          motion.evaluate(angle);
          expect(motion.height).toBeLessThanOrEqual(centres.topHeight + 1e-16);
          expect(motion.height).toBeGreaterThanOrEqual(centres.bottomHeight - 1e-16);
        });
      }),
      { numRuns: 60 },
    );
  });
});

describe('largestOffAxis', () => {
  it('is the crank radius for a master, 25 mm', () => {
    expect(largestOffAxis(motionOf(5, 24, 0)) / mm).toBeCloseTo(25, 12);
  });

  it('bounds what the knuckle pin does at any angle and is reached to 1e-12 m', () => {
    const motion = motionOf(7, 27, 3);
    const bound = largestOffAxis(motion);
    let most = 0;
    for (let i = 0; i < 36_000; i++) {
      motion.evaluate((i * TURN) / 36_000);
      most = Math.max(most, Math.abs(motion.offAxis));
    }
    expect(most).toBeLessThanOrEqual(bound + 1e-15);
    // A hundredth of a degree off the peak loses at most r h^2 / 8.
    expect(bound - most).toBeLessThan(1e-9);
  });
});
