import { describe, expect, it } from 'vitest';
import type { Scavenging } from '../../../src/sim/engine.ts';
import { OutflowPurity } from '../../../src/sim/scavenging/outflow-purity.ts';
import { purityAfter } from '../../helpers/scavenge.ts';

type Law = Scavenging['law'];

const mixing: Law = { kind: 'perfect mixing' };
const displacement: Law = { kind: 'perfect displacement' };
const twoStage = (displacedShare: number): Law => ({ kind: 'displacement then mixing', displacedShare });
const RATIOS = [0.2, 0.4, 0.6, 0.8, 1, 1.2, 1.4, 1.6, 2];

describe('OutflowPurity', () => {
  it('gives SE = 1 − exp(−SR) for perfect mixing, to 1e-10', () => {
    for (const SR of RATIOS) expect(purityAfter(SR, mixing, 0.05)).toBeCloseTo(1 - Math.exp(-SR), 10);
  });

  it('gives the textbook exercises: SR 1.45 → SE 0.765, TE 0.53; SR 0.93 → SE 0.605, TE 0.651', () => {
    expect(purityAfter(1.45, mixing, 0.05)).toBeCloseTo(0.7654, 4);
    expect(purityAfter(1.45, mixing, 0.05) / 1.45).toBeCloseTo(0.53, 2);
    expect(purityAfter(0.93, mixing, 0.05)).toBeCloseTo(0.605, 3);
    expect(purityAfter(0.93, mixing, 0.05) / 0.93).toBeCloseTo(0.651, 3);
  });

  it('gives SE = min(SR, 1) for perfect displacement as the smoothing narrows: off by no more than its width', () => {
    for (const smoothing of [0.1, 0.01, 0.001])
      for (const SR of RATIOS) {
        const off = Math.min(SR, 1) - purityAfter(SR, displacement, smoothing);
        expect(off).toBeLessThanOrEqual(smoothing);
        expect(off).toBeGreaterThan(-1e-9);
      }
    expect(purityAfter(0.85, displacement, 0.1)).toBeCloseTo(0.85, 10);
  });

  it('gives SE = SR up to x, then 1 − (1 − x) exp(x − SR), for displacement then mixing', () => {
    for (const x of [0.2, 0.4, 0.6])
      for (const SR of RATIOS) {
        const ideal = SR <= x ? SR : 1 - (1 - x) * Math.exp(x - SR);
        // The cubic lets out x w / 2 at the most before its time.
        expect(Math.abs(purityAfter(SR, twoStage(x), 1e-4) - ideal)).toBeLessThan(1e-4);
        expect(Math.abs(purityAfter(SR, twoStage(x), 0.05) - ideal)).toBeLessThan(0.025);
      }
  });

  it('gives the table of the two-stage form: 0.671 at SR 1 and 0.879 at SR 2 for x = 0.4, 0.853 at 1.6 for 0.6', () => {
    expect(purityAfter(1, twoStage(0.4), 1e-4)).toBeCloseTo(0.671, 3);
    expect(purityAfter(2, twoStage(0.4), 1e-4)).toBeCloseTo(0.879, 3);
    expect(purityAfter(1.6, twoStage(0.6), 1e-4)).toBeCloseTo(0.853, 3);
  });

  it('is perfect mixing at x = 0 and perfect displacement at x = 1', () => {
    for (const chi of [0, 0.1, 0.5, 0.97, 1]) {
      const evaluate = (law: Law) => new OutflowPurity({ law, smoothing: 0.05 }).evaluate(chi);
      expect(evaluate(twoStage(0))).toBe(evaluate(mixing));
      expect(evaluate(twoStage(1))).toBe(evaluate(displacement));
    }
  });

  it('reproduces perfect mixing from the two-point table (0, 0), (1, 1)', () => {
    const table: Law = { kind: 'table', inside: [0, 1], leaving: [0, 1] };
    for (const SR of RATIOS) expect(purityAfter(SR, table, 0)).toBeCloseTo(1 - Math.exp(-SR), 10);
  });

  it('draws straight lines between the points of a table and meets them exactly', () => {
    const inside = [0, 0.3, 0.5, 1];
    const leaving = [0, 0.05, 0.4, 1];
    const purity = new OutflowPurity({ law: { kind: 'table', inside, leaving }, smoothing: 0.1 });
    inside.forEach((chi, i) => expect(purity.evaluate(chi)).toBe(leaving[i]));
    expect(purity.evaluate(0.15)).toBeCloseTo(0.025, 14);
    expect(purity.evaluate(0.75)).toBeCloseTo(0.7, 14);
  });

  it('never lets out gas purer than inside, and only fresh gas when nothing else is there: β ≤ χ, β(1) = 1', () => {
    for (const law of [mixing, displacement, twoStage(0.2), twoStage(0.6), twoStage(0.01)])
      for (const smoothing of [0.5, 0.05, 1e-3, 0]) {
        const purity = new OutflowPurity({ law, smoothing });
        let before = 0;
        for (let i = 0; i <= 2000; i++) {
          const beta = purity.evaluate(i / 2000);
          expect(beta).toBeLessThanOrEqual(i / 2000);
          expect(beta).toBeGreaterThanOrEqual(before);
          before = beta;
        }
        expect(purity.evaluate(1)).toBe(1);
        expect(purity.evaluate(0)).toBe(0);
      }
  });

  it('spreads a jump over the stated width: continuous to 1e-5 for steps of 1e-6 at width 0.5', () => {
    const purity = new OutflowPurity({ law: twoStage(0.6), smoothing: 0.5 });
    for (let chi = 0; chi < 1; chi += 1e-4)
      expect(Math.abs(purity.evaluate(chi + 1e-6) - purity.evaluate(chi))).toBeLessThan(1e-5);
    expect(purity.evaluate(0.09)).toBe(0);
    expect(purity.evaluate(0.35)).toBeCloseTo(0.175, 12);
    expect(purity.evaluate(0.6)).toBe(0.6);
  });
});
