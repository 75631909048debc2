import { describe, expect, it } from 'vitest';
import { headline } from '../../src/app/headline.ts';
import type { Verdict } from '../../src/sim/results/verdict.ts';
import { rpm } from '../../src/sim/units.ts';

const verdict = (part: Partial<Verdict>): Verdict => ({
  enough: null,
  margin: null,
  speed: null,
  short: [],
  cranking: false,
  unsolved: [],
  text: '',
  ...part,
});
const unknown = verdict({});
const read = (here: Verdict | null, range: Verdict, wanted = 1): string =>
  headline(here, range, wanted)
    .map((phrase) => phrase.text)
    .join('');

describe('headline', () => {
  it('says by how much the blower is big enough at 6000 rpm', () => {
    const here = verdict({ enough: true, margin: 0.0437, speed: 6000 * rpm });
    expect(read(here, unknown)).toBe('The blower is big enough at 6000\u00a0rpm, by\u00a04.4\u202f%. ');
  });

  it('gives the margin as a share of what is wanted: 0.3 short of 1.2 is 25 %', () => {
    const here = verdict({ enough: false, margin: -0.3, speed: 3000 * rpm });
    expect(read(here, unknown, 1.2)).toContain('not big enough at 3000\u00a0rpm, by\u00a025\u202f%');
  });

  it('names every range in which it falls short, in the tone of a warning', () => {
    const short = [
      { from: 500 * rpm, to: 1000 * rpm },
      { from: 9500 * rpm, to: 9500 * rpm },
    ];
    const range = verdict({ enough: false, margin: -0.31, speed: 500 * rpm, short });
    const phrases = headline(null, range, 1);
    expect(phrases).toEqual([
      { text: 'Short at 500 to 1000 and 9500\u00a0rpm, by up to\u00a031\u202f%.', tone: 'short' },
    ]);
  });

  it('claims cranking only when cranking was worked out', () => {
    const range = { enough: true, margin: 0.007, speed: 9500 * rpm };
    expect(read(null, verdict({ ...range, cranking: true }))).toContain(
      'cranking included; least at 9500\u00a0rpm, by\u00a00.7\u202f%',
    );
    expect(read(null, verdict(range))).not.toContain('cranking');
  });

  it('says nothing while nothing is known', () => {
    expect(headline(null, unknown, 1)).toEqual([]);
  });
});
