import { whole } from '../charts/format.ts';
import { formatNumber } from '../design/format-quantity.ts';
import { THIN } from '../design/power-of-ten.ts';
import type { Verdict } from '../sim/results/verdict.ts';
import { rpm } from '../sim/units.ts';
import { speedText } from './pages/words.ts';

export interface Phrase {
  readonly text: string;
  /** `figure` marks what the sentence is about without judging it. */
  readonly tone: 'plain' | 'figure' | 'enough' | 'short';
}

const plain = (text: string): Phrase => ({ text, tone: 'plain' });
const turns = (speed: number): string => `${Math.round(speed / rpm)}`;

/** A margin in percent of what is wanted, two figures, so that a small one never reads as nothing. */
function marginText(margin: number, wanted: number): string {
  const share = Math.abs(margin / wanted) * 100;
  return `${share >= 10 ? whole(share) : formatNumber(share, 2)}${THIN}%`;
}

/**
 * The answer as one reads it: at the speed that is set, then over the range that has been worked out.
 *
 * @param here   - verdict on the point that is set, or null while there is none
 * @param range  - verdict on the points of the range so far, or null while they belong to an older question
 * @param wanted - wanted delivery ratio [-]
 */
export function headline(here: Verdict | null, range: Verdict | null, wanted: number): Phrase[] {
  const phrases: Phrase[] = [];
  if (here !== null && here.enough !== null && here.margin !== null && here.speed !== null) {
    phrases.push(
      plain('The blower is '),
      here.enough ? { text: 'big enough', tone: 'enough' } : { text: 'not big enough', tone: 'short' },
      plain(` at ${speedText(here.speed)}, `),
      { text: `by\u00a0${marginText(here.margin, wanted)}`, tone: here.enough ? 'enough' : 'short' },
      plain('. '),
    );
  }
  if (range === null || range.enough === null || range.margin === null || range.speed === null)
    return phrases;
  if (range.enough) {
    const cranking = range.cranking ? ', cranking included' : '';
    const subject = phrases.length > 0 ? 'It is' : 'The blower is big enough';
    phrases.push(
      plain(
        `${subject} at every speed worked out${cranking}; least at ${speedText(range.speed)}, by\u00a0${marginText(range.margin, wanted)}.`,
      ),
    );
  } else {
    const where = range.short
      .map(({ from, to }) => (from === to ? turns(from) : `${turns(from)} to ${turns(to)}`))
      .join(' and ');
    phrases.push({
      text: `Short at ${where}\u00a0rpm, by up to\u00a0${marginText(range.margin, wanted)}.`,
      tone: 'short',
    });
  }
  return phrases;
}
