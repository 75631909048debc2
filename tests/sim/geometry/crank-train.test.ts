import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PistonMotion } from '../../../src/sim/geometry/crank-train.ts';
import type { RodSystem } from '../../../src/sim/geometry/crank-train.ts';
import { rodPoints } from '../../../src/sim/geometry/rod-points.ts';
import { TURN, deg, mm } from '../../../src/sim/units.ts';
import { uniform } from './uniform.ts';

const rodsAt = (axisAngle: number, change: Partial<RodSystem> = {}): RodSystem => ({
  crankRadius: 25 * mm,
  masterRodLength: 95 * mm,
  masterAxis: 0,
  axisAngle,
  knuckleRadius: 24 * mm,
  knuckleAngle: axisAngle,
  rodLength: 71 * mm,
  ...change,
});
const master = rodsAt(0, { knuckleRadius: 0, rodLength: 95 * mm });

const heightAt = (rods: RodSystem, angle: number): number => {
  const motion = new PistonMotion(rods);
  motion.evaluate(angle);
  return motion.height;
};

const sliderCrank = (r: number, l: number, angle: number): number =>
  r * Math.cos(angle) + Math.sqrt(l ** 2 - (r * Math.sin(angle)) ** 2);

/** Any rods that go round: k below 0.4 L, r below 0.35 of what the articulated rod leaves. */
const anyRods = fc
  .record({
    crankRadius: uniform(0.01, 0.06),
    rodOverRadius: uniform(3, 6),
    knuckleOverRod: uniform(0, 0.35),
    masterAxis: uniform(-4, 4),
    fromMaster: uniform(0, TURN),
    knuckleShift: uniform(-0.1, 0.1),
  })
  .map((some): RodSystem => {
    const masterRodLength = some.crankRadius * some.rodOverRadius;
    const knuckleRadius = masterRodLength * some.knuckleOverRod;
    return {
      crankRadius: some.crankRadius,
      masterRodLength,
      masterAxis: some.masterAxis,
      axisAngle: some.masterAxis + some.fromMaster,
      knuckleRadius,
      knuckleAngle: some.fromMaster + some.knuckleShift,
      rodLength: masterRodLength - knuckleRadius,
    };
  });

describe('PistonMotion', () => {
  // Independent hand-checked values, crank 25, rod 95, knuckles 24, articulated rod 71 mm; to 5 decimals of a millimetre.
  const at72: [number, number][] = [
    [0, 98.62596],
    [45, 115.07205],
    [72, 118.98163],
    [90, 117.91648],
    [135, 103.66072],
    [180, 83.17511],
    [270, 70.36366],
  ];
  it.each(at72)('stands the pin at 72° as published at crank angle %d°: %d mm', (angle, height_mm) => {
    expect(heightAt(rodsAt(72 * deg), angle * deg) / mm).toBeCloseTo(height_mm, 5);
  });

  const at144: [number, number][] = [
    [0, 73.23728],
    [90, 103.70129],
    [144, 119.61403],
    [180, 113.68813],
    [270, 74.31203],
  ];
  it.each(at144)('stands the pin at 144° as published at crank angle %d°: %d mm', (angle, height_mm) => {
    expect(heightAt(rodsAt(144 * deg), angle * deg) / mm).toBeCloseTo(height_mm, 5);
  });

  it('stands the master at r + L, sqrt(L² - r²) and L - r: 120, 91.65151 and 70 mm', () => {
    expect(heightAt(master, 0) / mm).toBeCloseTo(120, 12);
    expect(heightAt(master, 90 * deg) / mm).toBeCloseTo(91.65151, 5);
    expect(heightAt(master, 180 * deg) / mm).toBeCloseTo(70, 12);
  });

  it('is the plain slider-crank about its own axis on plain rods, knuckle radius 0, to 1e-16 m', () => {
    for (const axis of [0, 1.1, 2.5, 4.9])
      for (let angle = -7; angle < 7; angle += 0.13)
        expect(
          Math.abs(
            heightAt(rodsAt(axis, { knuckleRadius: 0, rodLength: 95 * mm }), angle) -
              sliderCrank(25 * mm, 95 * mm, angle - axis),
          ),
        ).toBeLessThan(1e-16);
  });

  it('tends to the plain slider-crank in proportion to a vanishing knuckle radius', () => {
    const gap = (k: number): number => {
      let worst = 0;
      for (const axis of [0, 1.1, 2.5, 4.9])
        for (let angle = 0; angle < TURN; angle += 0.1) {
          const rods = rodsAt(axis, { knuckleRadius: k, rodLength: 95 * mm - k });
          const plain = sliderCrank(25 * mm, 95 * mm, angle - axis);
          worst = Math.max(worst, Math.abs(heightAt(rods, angle) - plain));
        }
      return worst;
    };
    expect(gap(1e-5) / gap(1e-6)).toBeCloseTo(10, 1);
    expect(gap(1e-9)).toBeLessThan(1e-9);
  });

  it('has the exact slope: equal to central differences of any rods to their own accuracy', () => {
    fc.assert(
      fc.property(anyRods, uniform(-10, 10), (rods, angle) => {
        const h = 1e-4;
        const at = (shift: number): number => heightAt(rods, angle + shift);
        // Fourth-order difference: error about h^4 r / 30 plus round-off eps L / h, below 1e-11 of the rod.
        const difference = (8 * (at(h) - at(-h)) - (at(2 * h) - at(-2 * h))) / (12 * h);
        const motion = new PistonMotion(rods);
        motion.evaluate(angle);
        expect(Math.abs(motion.slope - difference)).toBeLessThan(1e-11 * rods.masterRodLength);
      }),
      { numRuns: 300 },
    );
  });

  it('only turns with the row when master and axis turn together', () => {
    fc.assert(
      fc.property(anyRods, uniform(-6, 6), (rods, turn) => {
        const turned = { ...rods, masterAxis: rods.masterAxis + turn, axisAngle: rods.axisAngle + turn };
        expect(Math.abs(heightAt(turned, 1 + turn) - heightAt(rods, 1))).toBeLessThan(
          1e-14 * rods.masterRodLength,
        );
      }),
    );
  });

  it('is mirrored by a cylinder on the other side of the master', () => {
    for (let angle = 0; angle < TURN; angle += 0.2)
      expect(Math.abs(heightAt(rodsAt(72 * deg), angle) - heightAt(rodsAt(-72 * deg), -angle))).toBeLessThan(
        1e-16,
      );
  });

  it('is not a number where the articulated rod is shorter than its pin is off the axis', () => {
    expect(heightAt(rodsAt(144 * deg, { rodLength: 10 * mm }), 0.9)).toBeNaN();
  });
});

describe('rodPoints', () => {
  it('keeps every rod at its length and the gudgeon pin on the axis at the height of the motion', () => {
    fc.assert(
      fc.property(anyRods, uniform(-10, 10), (rods, angle) => {
        const { crankPin, knucklePin, gudgeonPin } = rodPoints(rods, angle);
        const scale = rods.masterRodLength;
        const apart = (a: { x: number; y: number }, b: { x: number; y: number }): number =>
          Math.hypot(a.x - b.x, a.y - b.y);
        expect(Math.abs(Math.hypot(crankPin.x, crankPin.y) - rods.crankRadius)).toBeLessThan(1e-15);
        expect(Math.abs(apart(crankPin, knucklePin) - rods.knuckleRadius)).toBeLessThan(1e-14 * scale);
        expect(Math.abs(apart(knucklePin, gudgeonPin) - rods.rodLength)).toBeLessThan(1e-14 * scale);
        const height = gudgeonPin.x * Math.cos(rods.axisAngle) + gudgeonPin.y * Math.sin(rods.axisAngle);
        expect(Math.abs(height - heightAt(rods, angle))).toBeLessThan(1e-14 * scale);
      }),
    );
  });

  it('puts the knuckle pin on the cylinder axis when the master stands at its top dead centre', () => {
    const { knucklePin } = rodPoints(rodsAt(72 * deg), 0);
    const fromPin = Math.atan2(knucklePin.y, knucklePin.x - 25 * mm);
    expect(fromPin / deg).toBeCloseTo(72, 10);
  });
});
