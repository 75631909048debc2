import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SpeedLine } from '../../../../src/sim/blower/centrifugal/speed-line.ts';
import type { Engine } from '../../../../src/sim/index.ts';

type Impeller = NonNullable<Engine['blower']['impeller']>;
const D = 0.07;
const BEST = Math.PI * 0.08 * D ** 3;
const wheel = (changes: Partial<Impeller> = {}): SpeedLine =>
  new SpeedLine(
    {
      blades: 12,
      backsweep: Math.PI / 6,
      exitWidth: 0.08 * D,
      throatArea: 0.17 * D * D,
      efficiency: 0.72,
      efficiencyAtHalf: 0.9,
      flowWithoutHead: 1.6,
      workFactor: 1.03,
      ...changes,
    },
    BEST,
    D,
  );

/** Sound wheels: the range in which the design file takes them. */
const someWheel = fc
  .record({
    blades: fc.integer({ min: 6, max: 30 }),
    backsweep: fc.double({ min: 0, max: 0.8, noNaN: true }),
    efficiency: fc.double({ min: 0.3, max: 0.88, noNaN: true }),
    efficiencyAtHalf: fc.double({ min: 0.6, max: 0.97, noNaN: true }),
    flowWithoutHead: fc.double({ min: 1.2, max: 2, noNaN: true }),
    exitWidth: fc.double({ min: 0.11 * D, max: 0.2 * D, noNaN: true }),
  })
  .map(wheel);
const seed = { seed: 5, numRuns: 100 };

describe('SpeedLine', () => {
  it('has the stated efficiency at best flow, the stated share of it at half, and no head where that is said', () => {
    expect(wheel().efficiency(1)).toBeCloseTo(0.72, 12);
    // The curve to half flow stands where the head falls by itself by a fifth per best flow, here down to 0.91.
    expect(wheel().efficiency(0.95)).toBeCloseTo(0.72 * (1 - 0.01 * 0.1), 12);
    expect(wheel().head(1.6)).toBeCloseTo(0, 12);
  });

  it('takes work by the exit triangle: mu (sigma - tan(beta) phi D / (pi b)), by hand', () => {
    const sigma = 1 - Math.sqrt(Math.cos(Math.PI / 6)) / 12 ** 0.7;
    const kappa = (0.08 / (Math.PI * 0.08)) * Math.tan(Math.PI / 6);
    expect(wheel().work(1)).toBeCloseTo(1.03 * (sigma - kappa), 12);
    expect(wheel({ backsweep: 0 }).work(0.3)).toBe(wheel({ backsweep: 0 }).work(1.4));
  });

  it('surges at best flow with radial blades, and the lower the more they are swept back', () => {
    const surges = [0, 20, 40].map((sweep) => wheel({ backsweep: (sweep * Math.PI) / 180 }).surge);
    expect(surges[0]).toBeCloseTo(1, 12);
    expect(surges[1]).toBeLessThan(0.9);
    expect(surges[2]).toBeLessThan(surges[1]);
  });

  it('has its highest head, as the work line times the efficiency has it, at the surge flow', () => {
    const { surge } = wheel();
    const curve = (x: number) => wheel().work(x) * 0.72 * (1 - 0.4 * (x - 1) ** 2);
    for (const near of [-0.01, 0.01]) expect(curve(surge + near)).toBeLessThan(curve(surge));
  });

  it('gives every head one flow, from blown back to beyond the flow without head, with the true slope', () => {
    fc.assert(
      fc.property(someWheel, fc.double({ min: -2, max: 2.2, noNaN: true }), (line, x) => {
        line.solve(line.head(x));
        expect(line.flow).toBeCloseTo(x, 8);
        const slope = (line.head(x + 1e-6) - line.head(x - 1e-6)) / 2e-6;
        expect(slope).toBeLessThan(0);
        expect(line.slope * slope).toBeCloseTo(1, 3);
      }),
      seed,
    );
  });
});
