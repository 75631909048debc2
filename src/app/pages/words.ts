import { figure, whole } from '../../charts/format.ts';
import { rpm } from '../../sim/units.ts';
import type { Phrase } from '../headline.ts';

export const plain = (text: string): Phrase => ({ text, tone: 'plain' });
/** A figure that the sentence is about. */
export const figured = (text: string): Phrase => ({ text, tone: 'figure' });
export const short = (text: string): Phrase => ({ text, tone: 'short' });

const words = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** A count in words up to twelve, in figures beyond. */
export const countWord = (count: number): string => words[count] ?? String(count);

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A speed in words; the number and its unit stay on one line. */
export const speedText = (speed: number): string => `${whole(speed / rpm)}\u00a0rpm`;

/** A share in percent with two significant figures, so that a small one never reads as nothing. */
export const shareText = (share: number): string => {
  // What is left of a difference of equals is no figure.
  if (Math.abs(share) < 1e-12) return `0\u202f%`;
  const text = figure(100 * share, 2);
  return `${Number.isFinite(share) && Math.abs(share) >= 0.995 ? figure(100 * share, 3) : text}\u202f%`;
};
