import { describe, expect, it } from 'vitest';
import { crankcaseSentence } from '../../../../src/sim/study/crankcase/crankcase-sentence.ts';
import { undersides } from '../../../../src/sim/study/crankcase/undersides.ts';
import { modelOf, presetEngine } from '../../../helpers/engines.ts';

const lovage = undersides(modelOf(presetEngine('lovage-7')).geometry);
const { crankRadius, masterRodLength } = presetEngine('lovage-7').train;
const lambda = crankRadius / masterRodLength;

describe('undersides', () => {
  it('moves its whole swept volume below one piston, half of it as amplitude of the first order', () => {
    // The dead centres are among the 360 angles.
    expect(lovage.one.swing).toBeCloseTo(1, 12);
    expect(lovage.one.harmonics[0]).toBeCloseTo(0.5, 9);
    expect(undersides(modelOf(presetEngine('caraway-1')).geometry).own.swing).toBeCloseTo(1, 4);
  });

  it('keeps of a plain rod the second order λ/4 + λ³/16 of the crank radius, which two opposed pistons share undiminished', () => {
    const second = (lambda / 4 + lambda ** 3 / 16) / 2;
    // The next term of the series is 15 λ^5 / 512.
    expect(Math.abs(lovage.two.harmonics[1]! / second - 1)).toBeLessThan(lambda ** 4);
    expect(lovage.two.harmonics[1]).toBeCloseTo(lovage.one.harmonics[1]!, 12);
    expect(lovage.two.harmonics[0]).toBeLessThan(1e-12);
  });

  it('leaves nothing below the seventh order of seven even plain rods, and little of the first order of articulated ones', () => {
    for (const amplitude of lovage.even.harmonics.slice(0, 6)) expect(amplitude).toBeLessThan(1e-12);
    expect(lovage.even.swing).toBeLessThan(1e-10);
    expect(lovage.own.swing).toBeGreaterThan(0.01);
    expect(lovage.own.swing).toBeLessThan(0.03);
  });

  it('has a mean of nothing and ends as it begins', () => {
    for (const { share } of [lovage.one, lovage.two, lovage.own]) {
      expect(Math.abs(share.slice(1).reduce((sum, each) => sum + each, 0))).toBeLessThan(1e-9);
      expect(share.at(-1)).toBe(share[0]);
    }
  });
});

describe('crankcaseSentence', () => {
  it('says that one piston pumps, and that seven do not', () => {
    const caraway = undersides(modelOf(presetEngine('caraway-1')).geometry);
    expect(crankcaseSentence(caraway, 1)).toContain('would pump');
    expect(crankcaseSentence(lovage, 7)).toMatch(/all 7 together move \d\.\d %.*pumps nothing/s);
  });
});
