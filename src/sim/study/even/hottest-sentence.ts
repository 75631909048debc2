import { celsiusFromKelvin, deg } from '../../units.ts';
import type { Cause } from './evenness.ts';
import type { Hottest } from './hottest.ts';

const CAUSED: Readonly<Record<Cause, readonly [by: string, without: string]>> = {
  rods: ['the articulated rods make it so', 'on plain rods'],
  pulses: ['the others’ pulses make it so', 'with plenum and collectors still'],
  trims: ['trims make it so', 'without trims'],
};
const BEHIND: Readonly<Record<Hottest['behind'][number]['figure'], (departure: number) => string>> = {
  exhaustOpening: (angle) =>
    `lets its burned gas go ${Number((angle / deg).toPrecision(2))}° later, so that it stays hot for longer`,
  trappedMass: (share) => `traps ${percentText(share)} more charge, and so burns more`,
  trappedCompression: (share) => `squeezes its charge ${percentText(share)} harder`,
};

/** A share in percent with two figures. */
const percentText = (share: number): string =>
  `${Number((100 * Math.abs(share)).toPrecision(2))} %`.replace('-', '−');

/**
 * Which cylinder runs hottest and why, for someone who has never seen such an engine: the answer, then what is behind it.
 *
 * @param names - of the cylinders, row by row
 */
export function hottestSentence(
  hottest: Hottest,
  names: readonly string[],
): { answer: string; reason: string } {
  const name = names[hottest.cylinder]!;
  if (names.length === 1) return { answer: 'There is one cylinder, and nothing to share.', reason: '' };
  if (hottest.alike) {
    return {
      answer:
        'No cylinder runs hotter than the others: their walls take the same heat to within half a percent.',
      reason: '',
    };
  }
  const answer = `${name} runs hottest: its walls take ${Math.round(hottest.wallHeat)} W, ${percentText(hottest.above)} more than the mean.`;
  const off = Math.abs(hottest.aboveWithout);
  const left =
    off < 5e-4
      ? 'like the rest'
      : `${percentText(off)} ${hottest.aboveWithout > 0 ? 'above' : 'below'} the mean`;
  const why = hottest.cause
    ? `It is not worse made: ${CAUSED[hottest.cause][0]}; ${CAUSED[hottest.cause][1]} it would be ${left}.`
    : 'No one cause explains it: rods, pulses and trims do it together.';
  const because = hottest.behind.map(({ figure, departure }) => BEHIND[figure](departure));
  const behind = because.length === 0 ? '' : ` Beside the mean cylinder it ${listed(because)}.`;
  const { cylinder, temperature } = hottest.exhaust;
  const degrees = `${Math.round(celsiusFromKelvin(temperature))} °C`;
  const exhaust =
    cylinder === hottest.cylinder
      ? ` Its exhaust is the hottest, too, at ${degrees}.`
      : ` The hottest exhaust is another’s, ${names[cylinder]!} at ${degrees}: gas that gives less work leaves hotter.`;
  return { answer, reason: `${why}${behind}${exhaust}` };
}

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')}, and ${parts.at(-1)!}`;
