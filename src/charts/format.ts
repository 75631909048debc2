import { format } from 'd3-format';
import { THIN, powerOfTen } from '../design/power-of-ten.ts';

/** Shown where a figure is missing. */
export const missing = '–';

const minus = (text: string): string => text.replace('-', '−');

/** Digits in groups of three from 100 000 on. */
const grouped = (text: string): string =>
  text.replace(/\d{6,}/, (digits) => digits.replace(/(?<=\d)(?=(\d{3})+$)/g, THIN));

/**
 * A figure for reading: so many significant digits, trailing zeros kept, a power of ten only below a ten-thousandth
 * and from ten million on. What is not finite reads as missing.
 */
export function figure(value: number | null, digits = 3): string {
  if (value === null || !Number.isFinite(value)) return missing;
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < 1e-4 || size >= 1e7) return powerOfTen(value, digits);
  if (size >= 10 ** digits) return minus(grouped(format('.0f')(value)));
  return minus(format(`.${digits}r`)(value));
}

/**
 * A figure among others of its kind, the largest of which is `reach`: as `figure`, but no more than one decimal finer
 * than that one is written with, so that 0.000832 beside 0.282 reads 0.0008.
 */
export function figureAmong(value: number | null, reach: number, digits = 3): string {
  if (value === null || !Number.isFinite(value) || value === 0) return figure(value, digits);
  const decimals = (size: number): number => digits - 1 - Math.floor(Math.log10(Math.abs(size)));
  const finest = Math.max(0, decimals(reach) + 1);
  if (!Number.isFinite(finest) || decimals(value) <= finest) return figure(value, digits);
  return minus(format(`.${finest}f`)(value));
}

/** The largest size in a column; what is not finite does not count. */
export const reachOf = (values: ArrayLike<number | null | string>): number =>
  Array.from(values).reduce<number>(
    (most, value) => (typeof value === 'number' && Math.abs(value) > most ? Math.abs(value) : most),
    0,
  );

/** A count or a speed to the nearest whole number, however large. */
export const whole = (value: number): string =>
  Number.isFinite(value) ? minus(grouped(format('.0f')(value))) : missing;

/** A share as a whole percentage: `7 %`. */
export const percent = (share: number): string =>
  Number.isFinite(share) ? `${minus(format('.0f')(100 * share))}${THIN}%` : missing;

export const degrees = (angle_deg: number): string => `${minus(format('.0f')(angle_deg))}°`;

/** An angle to three figures: `51.4°`. */
export const degreesOf = (angle_deg: number): string => `${figure(angle_deg, 3)}°`;
