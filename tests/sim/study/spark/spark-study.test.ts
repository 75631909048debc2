import { describe, expect, it } from 'vitest';
import { firstCrossing } from '../../../../src/sim/study/spark/first-crossing.ts';
import { camSentence, foundSentence } from '../../../../src/sim/study/spark/spark-sentence.ts';
import { sparkStudy } from '../../../../src/sim/study/spark/spark-study.ts';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { deg } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { at, changed, modelOf, presetEngine } from '../../../helpers/engines.ts';

const find = (engine: Parameters<typeof modelOf>[0], limit?: number) =>
  sound(finishStudy(sparkStudy(modelOf(engine), at(5000), limit)));

describe('sparkStudy', () => {
  const dill = presetEngine('dill-3');
  const study = find(changed(dill, { knock: { octaneOffset: -25 } }));
  const names = ['A1', 'A2', 'A3'];

  it('finds a highest torque inside, no solved point above it but by what a parabola leaves', () => {
    const { best, points } = study;
    expect(best!.advance).toBeGreaterThan(10 * deg);
    expect(best!.advance).toBeLessThan(40 * deg);
    for (const { torque } of points) expect(torque).toBeLessThanOrEqual(best!.torque);
  });

  it('allows the less advance the lower the octane number, each cylinder up to where its own integral reaches the limit', () => {
    const { knockLimited, knockLimitedOf, points, limit } = study;
    expect(knockLimited).toBe(Math.min(...knockLimitedOf));
    expect(Number.isFinite(knockLimited)).toBe(true);
    for (const { advance, integrals } of points)
      if (advance < knockLimited) for (const each of integrals) expect(each!).toBeLessThanOrEqual(limit);
    expect(foundSentence(study, names)).toMatch(/octane number (would allow|allows) .*°, cylinder A\d first/);
  });

  it('mirrors the even cam’s error of the two articulated pistons, and leaves the master without any', () => {
    expect(study.early[0]).toBeCloseTo(0, 9);
    expect(study.early[1]!).toBeCloseTo(-study.early[2]!, 9);
    expect(Math.abs(study.early[1]!)).toBeGreaterThan(deg);
    const { 'own dead centre': own, 'even spacing': even } = study.ways!;
    expect(even.peaks[1] - even.peaks[0]).toBeGreaterThan(own.peaks[1] - own.peaks[0]);
    expect(camSentence(study, names)).toMatch(/early by \d\.\d° and A\d late by/);
  });
});

describe('sparks from even spacing', () => {
  it('come a third of a turn apart in a row of three, each its advance before the pin passes its axis', () => {
    const { geometry } = modelOf(changed(presetEngine('dill-3'), { train: { sparkFrom: 'even spacing' } }));
    const advance = presetEngine('dill-3').train.rows[0]!.cylinders[0]!.sparkAdvance;
    geometry.cylinders.forEach(({ sparkAngle, pinPasses }, j) => {
      expect(pinPasses / deg).toBeCloseTo(120 * j, 9);
      expect(sparkAngle / deg).toBeCloseTo((120 * j - advance / deg + 360) % 360, 9);
    });
  });
});

describe('firstCrossing', () => {
  it('reads the first passing of a level off a straight line, at once or never', () => {
    expect(firstCrossing([0, 10, 20, 30], [0, 1, 2, 0], 1.5)).toBe(15);
    expect(firstCrossing([0, 10], [2, 3], 1)).toBe(0);
    expect(firstCrossing([0, 10], [0, 0.5], 1)).toBe(Infinity);
  });
});
