import { bar, deg } from '../../units.ts';
import type { SparkStudy } from './spark-study.ts';

const inBar = (pressure: number): string => `${(pressure / bar).toFixed(2)}\u00a0bar`;
const degrees = (angle: number, digits = 0): string => `${(angle / deg).toFixed(digits).replace('-', '−')}°`;

/** Advance of most torque and what the octane number allows, in words. */
export function foundSentence(
  { best, knockLimited, knockLimitedOf, points, now, limit }: SparkStudy,
  names: readonly string[],
): string {
  const least = points[0]!.advance;
  const most = points.at(-1)!.advance;
  const said = best
    ? `Most torque at ${degrees(best.advance)} before top dead centre`
    : `Torque has no highest point between ${degrees(least)} and ${degrees(most)}`;
  const set = `the design has ${degrees(now)}`;
  if (knockLimited === Infinity)
    return `${said}; no end gas comes to ${limit} of its ignition delay up to ${degrees(most)}; ${set}.`;
  const worst = names[knockLimitedOf.indexOf(knockLimited)]!;
  const who = names.length > 1 ? `, cylinder ${worst} first` : '';
  const held =
    knockLimited <= least
      ? `the fuel’s octane number allows less than ${degrees(least)}${who}`
      : best !== null && knockLimited > best.advance
        ? `the fuel’s octane number would allow ${degrees(knockLimited)}${who}`
        : `the fuel’s octane number allows ${degrees(knockLimited)}${who}: knock limits it`;
  return `${said}; ${held}; ${set}.`;
}

/** What an even cam does where rods are articulated, in words. */
export function camSentence(
  { early, ways }: SparkStudy,
  names: readonly string[],
  pressure: (value: number) => string = inBar,
): string {
  if (ways === null) return 'All rods are plain: an even cam fires every cylinder where it should.';
  const first = early.indexOf(Math.max(...early));
  const last = early.indexOf(Math.min(...early));
  const own = ways['own dead centre'];
  const even = ways['even spacing'];
  const spread = ({ peaks: [low, high] }: typeof own) => pressure(high - low);
  const loss = own.imep > 0 ? (100 * (own.imep - even.imep)) / own.imep : 0;
  const margin =
    own.knockMargin === null ||
    even.knockMargin === null ||
    number(own.knockMargin) === number(even.knockMargin)
      ? ''
      : ` and the worst octane margin from ${number(own.knockMargin)} to ${number(even.knockMargin)}`;
  return (
    `An evenly spaced cam, uncompensated, fires cylinder ${names[first]} early by ${degrees(early[first]!, 1)} and ${names[last]} late by ${degrees(-early[last]!, 1)}, each against its own dead centre. ` +
    `It takes IMEP from ${pressure(own.imep)} to ${pressure(even.imep)} (${loss >= 0 ? '−' : '+'}${Math.abs(loss).toFixed(2)}\u202f%), peak pressures from ${spread(own)} apart to ${spread(even)}${margin}.`
  );
}

const number = (value: number): string => value.toFixed(1).replace('-', '−');

/** What the figures are not. */
export const SPARK_LIMITS =
  'The limit is that of one law for end gas: engines differ by several octane numbers, hot spots and carbon are not in it. Begin late, advance in small steps, ' +
  'listen, and read plugs and crowns.';
