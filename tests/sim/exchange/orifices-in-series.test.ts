import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orificeMassFlow } from '../../../src/sim/exchange/orifice.ts';
import {
  chokedInSeries,
  flowInSeries,
  ratioBehind,
  SeriesArea,
} from '../../../src/sim/exchange/orifices-in-series.ts';
import { AIR } from '../../../src/sim/gas/air.ts';
import { findRoot } from '../../../src/sim/numerics/find-root.ts';

const GAMMA = 1.4;
const CRITICAL = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1));
const plain = (...areas: number[]) => areas.map((CdA) => ({ CdA, recovered: 0 }));
/** f = mdot sqrt(R T0) / p0 of one orifice. */
const single = (CdA: number, ratio: number) => orificeMassFlow(CdA, 1, 1, ratio, GAMMA, 1);

describe('chokedInSeries', () => {
  it('passes 0.0758 kg/s through a 20 mm restrictor of coefficient 1 at 288.15 K and 101.325 kPa, with a wide throttle behind it', () => {
    const hole = (Math.PI / 4) * 0.02 ** 2;
    const { flow } = chokedInSeries(plain(hole, 100 * hole), GAMMA);
    const mdot = (flow * 101_325) / Math.sqrt(AIR.gasConstant * 288.15);
    expect(mdot).toBeCloseTo(0.0758, 4);
  });

  it('is that of the narrower of two alone, at a ratio below the critical one, to 1e-9', () => {
    for (const areas of [plain(1, 2), plain(2, 1)]) {
      const { flow, ratio } = chokedInSeries(areas, GAMMA);
      const first = areas[0].CdA === 1;
      // The second chokes at the pressure that the first leaves it.
      const between = first
        ? CRITICAL
        : findRoot((p) => single(2, p) - p * single(1, CRITICAL), CRITICAL, 1 - 1e-12, 1e-14);
      expect(Math.abs(flow / (first ? single(1, 0) : between * single(1, 0)) - 1)).toBeLessThan(1e-9);
      expect(ratio).toBeLessThan(CRITICAL * (1 + 1e-6));
    }
  });

  it('chokes a venturi that wins back four fifths at 1 − 0.2 (1 − 0.528) = 0.906, to 1e-6', () => {
    const { flow, ratio } = chokedInSeries([{ CdA: 1, recovered: 0.8 }], GAMMA);
    expect(ratio).toBeCloseTo(1 - 0.2 * (1 - CRITICAL), 6);
    expect(flow).toBeCloseTo(single(1, 0), 9);
  });
});

describe('flowInSeries', () => {
  it('is what two orifices pass with the pressure between them found by bisection, to 1e-9', () => {
    for (const [a, b, ratio] of [
      [1, 1, 0.9],
      [1, 2, 0.6],
      [3, 1, 0.7],
      [1, 1.3, 0.45],
    ]) {
      const between = findRoot((p) => single(a, p) - p * single(b, ratio / p), ratio, 1, 1e-15);
      expect(Math.abs(flowInSeries(plain(a, b), ratio, GAMMA) / single(a, between) - 1)).toBeLessThan(1e-9);
    }
  });

  it('adds drops over squares of areas where little drops: 1/A² = Σ 1/Aᵢ², to 1e-3 at 100 Pa and to 1e-5 at 0.1 Pa', () => {
    const ratio = 1 - 100 / 101_325;
    const expected = Math.sqrt(2 * (1 - ratio)) / Math.sqrt(1 + 1 / 4 + 1 / 9);
    expect(Math.abs(flowInSeries(plain(1, 2, 3), ratio, GAMMA) / expected - 1)).toBeLessThan(1e-3);
    const tiny = 1 - 1e-6;
    expect(
      Math.abs(flowInSeries(plain(1, 2, 3), tiny, GAMMA) / Math.sqrt(2e-6 / (1 + 1 / 4 + 1 / 9)) - 1),
    ).toBeLessThan(1e-5);
  });

  it('falls as the pressure behind rises, never exceeds the narrowest alone, and gains by a diffuser', () => {
    const area = fc.double({ min: 0.2, max: 5, noNaN: true });
    const share = fc.double({ min: 0, max: 0.9, noNaN: true });
    const ratio = fc.double({ min: 0.2, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(fc.array(area, { minLength: 2, maxLength: 4 }), share, ratio, (areas, recovered, r) => {
        const series = plain(...areas);
        const flow = flowInSeries(series, r, GAMMA);
        expect(flowInSeries(series, Math.min(1, 1.01 * r), GAMMA)).toBeLessThanOrEqual(flow * (1 + 1e-9));
        for (const { CdA } of series) expect(flow).toBeLessThanOrEqual(single(CdA, r) * (1 + 1e-9));
        const better = [{ CdA: areas[0], recovered }, ...series.slice(1)];
        expect(flowInSeries(better, r, GAMMA)).toBeGreaterThanOrEqual(flow * (1 - 1e-9));
      }),
      { numRuns: 60, seed: 5 },
    );
  });
});

describe('ratioBehind', () => {
  it('is 1 without flow, and nothing where a flow chokes the second but not the first', () => {
    expect(ratioBehind(plain(1, 2), 0, GAMMA)).toBe(1);
    expect(ratioBehind(plain(2, 1), 1.01 * chokedInSeries(plain(2, 1), GAMMA).flow, GAMMA)).toBeNull();
  });
});

describe('SeriesArea', () => {
  const cases = [plain(1, 1.3), plain(1.3, 1, 2), [{ CdA: 1, recovered: 0.8 }, ...plain(1.5)]];

  it('passes as one orifice what all pass in line, within 1e-4 at any pressure ratio', () => {
    for (const series of cases) {
      const area = new SeriesArea(series, GAMMA);
      for (let ratio = 0.02; ratio < 0.9999; ratio += 0.0137)
        expect(Math.abs(single(area.at(ratio), ratio) / flowInSeries(series, ratio, GAMMA) - 1)).toBeLessThan(
          1e-4,
        );
    }
  });

  it('at rest is the incompressible sum, to which it tends', () => {
    for (const series of cases) {
      const area = new SeriesArea(series, GAMMA);
      expect(area.at(1)).toBe(area.atRest);
      expect(area.at(1 - 1e-9)).toBeCloseTo(area.atRest, 6);
    }
  });
});
