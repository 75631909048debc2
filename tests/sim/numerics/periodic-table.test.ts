import { describe, expect, it } from 'vitest';
import { PistonMotion } from '../../../src/sim/geometry/crank-train.ts';
import { PeriodicTable } from '../../../src/sim/numerics/periodic-table.ts';
import { TURN, deg, mm } from '../../../src/sim/units.ts';

function sampled(n: number, f: (t: number) => number, slope: (t: number) => number): PeriodicTable {
  const at = Array.from({ length: n }, (_, i) => (i * TURN) / n);
  return new PeriodicTable(at.map(f), at.map(slope));
}

function worst(
  table: PeriodicTable,
  f: (t: number) => number,
  slope: (t: number) => number,
): [number, number] {
  let value = 0;
  let rate = 0;
  for (let i = 0; i < 10_007; i++) {
    const t = (i * TURN) / 10_007;
    table.evaluate(t);
    value = Math.max(value, Math.abs(table.value - f(t)));
    rate = Math.max(rate, Math.abs(table.slope - slope(t)));
  }
  return [value, rate];
}

describe('PeriodicTable', () => {
  it('errs on a sine by h^4/384 in value, the bound of cubic Hermite, and falls 16-fold on halving', () => {
    const [at36] = worst(sampled(36, Math.sin, Math.cos), Math.sin, Math.cos);
    const [at72] = worst(sampled(72, Math.sin, Math.cos), Math.sin, Math.cos);
    expect(at36).toBeLessThan((TURN / 36) ** 4 / 384);
    expect(at36).toBeGreaterThan((0.9 * (TURN / 36) ** 4) / 384);
    expect(at36 / at72).toBeCloseTo(16, 0);
  });

  it('errs on the slope of a sine with third order', () => {
    const [, at36] = worst(sampled(36, Math.sin, Math.cos), Math.sin, Math.cos);
    const [, at72] = worst(sampled(72, Math.sin, Math.cos), Math.sin, Math.cos);
    expect(at36 / at72).toBeCloseTo(8, 0);
  });

  it('holds an articulated piston of 50 mm stroke to 1e-11 m and 1e-8 m/rad with 720 knots', () => {
    const motion = new PistonMotion({
      crankRadius: 25 * mm,
      masterRodLength: 95 * mm,
      masterAxis: 0,
      axisAngle: 144 * deg,
      knuckleRadius: 24 * mm,
      knuckleAngle: 144 * deg,
      rodLength: 71 * mm,
    });
    const height = (t: number): number => (motion.evaluate(t), motion.height);
    const slope = (t: number): number => (motion.evaluate(t), motion.slope);
    const [value, rate] = worst(sampled(720, height, slope), height, slope);
    expect(value).toBeLessThan(1e-11);
    expect(rate).toBeLessThan(1e-8);
  });

  it('takes any angle: negative, many turns on, and the turn itself', () => {
    const table = sampled(90, Math.sin, Math.cos);
    for (const t of [-1, -TURN, -100.3, 0, TURN, 2 * TURN, 5 * TURN + 0.2, 1e5 * TURN - 0.4]) {
      table.evaluate(t);
      expect(Math.abs(table.value - Math.sin(t))).toBeLessThan(1e-7);
      expect(Math.abs(table.slope - Math.cos(t))).toBeLessThan(1e-5);
    }
  });

  it('is continuous in value and slope across knots and across the turn', () => {
    const table = sampled(7, Math.sin, Math.cos);
    for (let i = -1; i <= 8; i++) {
      const knot = (i * TURN) / 7;
      table.evaluate(knot - 1e-9);
      const { value, slope } = table;
      table.evaluate(knot + 1e-9);
      expect(Math.abs(table.value - value)).toBeLessThan(3e-9);
      expect(Math.abs(table.slope - slope)).toBeLessThan(3e-8);
    }
  });

  it('refuses a table without entries or with unequal columns', () => {
    expect(() => new PeriodicTable([], [])).toThrow(RangeError);
    expect(() => new PeriodicTable([1, 2], [0])).toThrow(RangeError);
  });
});
