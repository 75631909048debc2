import { describe, expect, it } from 'vitest';
import { finishStudy } from '../../../../src/sim/study/study-step.ts';
import { rhythmOf } from '../../../../src/sim/study/turns/rhythm.ts';
import { runningTurns } from '../../../../src/sim/study/turns/running-turns.ts';
import { turnsSentence } from '../../../../src/sim/study/turns/turns-sentence.ts';
import { sound } from '../../../design/designs.ts';
import { at, changed, modelOf, presetEngine } from '../../../helpers/engines.ts';

const caraway = presetEngine('caraway-1');
const follow = (misfireResidual: number, throttle = 1) => {
  const model = modelOf(changed(caraway, { combustion: { misfireResidual } }));
  return sound(finishStudy(runningTurns(model, at(4000, throttle), { turns: 30 })));
};
const sentence = (study: ReturnType<typeof follow>, misfireResidual: number) =>
  turnsSentence(study, { ...caraway.combustion, misfireResidual }, at(4000).speed, ['1']);

describe('runningTurns', () => {
  const whole = follow(0.6);

  it('stays at the averaged state within 1 % where every charge is well below the limit, and says that every turn fires', () => {
    expect(whole.rhythms[0]).toEqual({ order: { fires: 1, of: 1 }, share: 1 });
    expect(whole.imep.mean / whole.averaged! - 1).toBeLessThan(0.01);
    expect(whole.imep.mean / whole.averaged! - 1).toBeGreaterThan(-0.01);
    expect(sentence(whole, 0.6)).toMatch(/it fires every turn\. IMEP/);
  });

  it('skips where burned gas exceeds the limit and fires where it does not, and tells how often and why', () => {
    const limit = 0.9 * whole.turns.at(-1)!.cylinders[0]!.residual;
    const study = follow(limit);
    const charges = study.turns.map(({ cylinders }) => cylinders[0]!);
    for (const { fired, residual } of charges) expect(fired).toBe(residual <= limit);
    const { share } = study.rhythms[0]!;
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThan(1);
    // A turn that skips does work on the gas; one after a skipped charge fires the better.
    expect(study.imep.least).toBeLessThan(0.5 * study.imep.mean);
    expect(sentence(study, limit)).toMatch(/of burned gas at the spark, and above .* none burns/);
  });
});

describe('rhythmOf', () => {
  const row = (text: string) => rhythmOf([...text].map((each) => each === '1'));

  it.each([
    ['111111', { fires: 1, of: 1 }],
    ['000000', { fires: 0, of: 1 }],
    ['01010101', { fires: 1, of: 2 }],
    ['110110110', { fires: 2, of: 3 }],
    ['110100101101', null],
  ])('reads %s', (text, order) => {
    expect(row(text).order).toEqual(order);
  });
});
