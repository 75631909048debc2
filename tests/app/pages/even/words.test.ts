import { describe, expect, it } from 'vitest';
import { changesText, meansText } from '../../../../src/app/pages/even/shop-text.ts';
import { reachSentence } from '../../../../src/app/pages/even/reach-sentence.ts';
import { UNIT_SETS } from '../../../../src/app/units/shown-units.ts';
import { hottestSentence } from '../../../../src/sim/study/even/hottest-sentence.ts';
import type { Hottest } from '../../../../src/sim/study/even/hottest.ts';
import { deg, mm } from '../../../../src/sim/units.ts';

const [metric] = UNIT_SETS;

describe('meansText', () => {
  it('writes hundredths of a millimetre and of a degree, a change with its sign', () => {
    expect(meansText('barrel', -0.15 * mm, metric!)).toBe('−0.15\u00a0mm');
    expect(meansText('transferTrim', 2 * mm, metric!, true)).toBe('+2.00\u00a0mm');
    expect(meansText('knuckle', 51.53 * deg, metric!)).toBe('51.53°');
  });
});

describe('changesText', () => {
  it('says what a rod comes to, and leaves that out where there was nothing before', () => {
    expect(changesText({ cylinder: 1, means: 'rod', from: 63 * mm, to: 63.1 * mm }, metric!)).toBe(
      '+0.10\u00a0mm → 63.10\u00a0mm',
    );
    expect(changesText({ cylinder: 1, means: 'barrel', from: 0, to: 0.1 * mm }, metric!)).toBe(
      '+0.10\u00a0mm',
    );
  });
});

describe('reachSentence', () => {
  const from = (effects: readonly (readonly number[])[]) => ({
    speed: 1,
    throttle: 1,
    cylinders: [],
    from: effects.map((trappedMass) => ({ trappedMass, purity: trappedMass })),
  });
  it('names the blowdown that takes most, or keeps most', () => {
    expect(
      reachSentence(
        from([
          [0, -0.013],
          [0.004, 0],
        ]),
        ['A1', 'A2'],
      ),
    ).toBe('The blowdown of A1 reaches A2 hardest: it takes 1.3\u202f% of its charge away.');
    expect(
      reachSentence(
        from([
          [0, -0.001],
          [0.02, 0],
        ]),
        ['A1', 'A2'],
      ),
    ).toContain('A2 reaches A1 hardest: it keeps 2.0');
  });
  it('says that none does where all effects are below what is known', () => {
    expect(
      reachSentence(
        from([
          [0, 1e-4],
          [1e-4, 0],
        ]),
        ['A1', 'A2'],
      ),
    ).toBe('No cylinder’s exhaust reaches another’s charge.');
  });
});

describe('hottestSentence', () => {
  const hottest: Hottest = {
    cylinder: 1,
    wallHeat: 1306,
    above: 0.036,
    alike: false,
    cause: 'rods',
    aboveWithout: 0,
    behind: [
      { figure: 'exhaustOpening', departure: 5.1 * deg },
      { figure: 'trappedMass', departure: 0.014 },
    ],
    exhaust: { cylinder: 0, temperature: 787.15 },
  };
  it('says which, how much, what makes it so and by what', () => {
    const { answer, reason } = hottestSentence(hottest, ['A1', 'A2']);
    expect(answer).toBe('A2 runs hottest: its walls take 1306 W, 3.6 % more than the mean.');
    expect(reason).toContain('the articulated rods make it so; on plain rods it would be like the rest');
    expect(reason).toContain(
      'lets its burned gas go 5.1° later, so that it stays hot for longer, and traps 1.4 % more charge',
    );
    expect(reason).toContain('The hottest exhaust is another’s, A1 at 514 °C');
  });
  it('calls none hottest where all are alike, nor where there is one', () => {
    expect(hottestSentence({ ...hottest, alike: true }, ['A1', 'A2']).answer).toMatch(
      /^No cylinder runs hotter/,
    );
    expect(hottestSentence(hottest, ['A1']).answer).toMatch(/^There is one cylinder/);
  });
});
