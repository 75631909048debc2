import { describe, expect, it } from 'vitest';
import { cycloidTipRadius, roundEdgeLand, thinGapFlow } from '../../../../src/sim/blower/slip/thin-gap.ts';

describe('thinGapFlow', () => {
  it('is that of an incompressible fluid of the mean density: d^2 dp / (12 mu L), by hand 56.3 m/s', () => {
    const flow = thinGapFlow(1, 50e-6, 2e-3, 110_000, 100_000, 287 * 300, 1.85e-5);
    const density = 105_000 / (287 * 300);
    expect(flow / (density * 50e-6)).toBeCloseTo(56.31, 1);
  });

  it('grows with the cube of the gap', () => {
    const at = (gap: number) => thinGapFlow(1, gap, 1e-3, 2e5, 1e5, 8e4, 2e-5);
    expect(at(60e-6) / at(30e-6)).toBeCloseTo(8, 12);
  });
});

describe('roundEdgeLand', () => {
  it('resists like the gap under a parabola, summed over 2 million slices', () => {
    const [radius, gap] = [0.02, 5e-5];
    let sum = 0;
    const step = 1e-7;
    for (let s = -0.1; s < 0.1; s += step) sum += step * (1 + (s * s) / (2 * radius * gap)) ** -3;
    expect(roundEdgeLand(radius, gap) / sum).toBeCloseTo(1, 6);
  });
});

describe('cycloidTipRadius', () => {
  it('is 1.25 tip radii with two lobes and 0.778 with three: by hand', () => {
    expect(cycloidTipRadius(1, 2)).toBeCloseTo(1.25, 12);
    expect(cycloidTipRadius(1, 3)).toBeCloseTo(7 / 9, 12);
  });
});
