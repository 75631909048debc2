import { format } from 'd3-format';

/** Shown where a figure is missing. */
export const missing = '–';

/** A narrow space that does not break: between the groups of a long number, before %, round the sign of a power. */
const thin = '\u202f';

const minus = (text: string): string => text.replace('-', '−');

const raised = (exponent: number): string =>
  String(exponent)
    .replace('-', '⁻')
    .replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]!);

/** A number as a few figures and a power of ten: `3.0 × 10⁻⁷`. */
export function power(value: number, digits: number): string {
  const [figures, exponent] = value.toExponential(digits - 1).split('e') as [string, string];
  return `${minus(figures)}${thin}×${thin}10${raised(Number(exponent))}`;
}

/** Digits in groups of three from 100 000 on. */
const grouped = (text: string): string =>
  text.replace(/\d{6,}/, (digits) => digits.replace(/(?<=\d)(?=(\d{3})+$)/g, thin));

/**
 * A figure for reading: so many significant digits, trailing zeros kept, a power of ten only below a ten-thousandth
 * and from ten million on. What is not finite reads as missing.
 */
export function figure(value: number | null, digits = 3): string {
  if (value === null || !Number.isFinite(value)) return missing;
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < 1e-4 || size >= 1e7) return power(value, digits);
  if (size >= 10 ** digits) return minus(grouped(format('.0f')(value)));
  return minus(format(`.${digits}r`)(value));
}

/** A share as a whole percentage: `7 %`. */
export const percent = (share: number): string =>
  Number.isFinite(share) ? `${minus(format('.0f')(100 * share))}${thin}%` : missing;

export const degrees = (angle_deg: number): string => `${minus(format('.0f')(angle_deg))}°`;
