import { format } from 'd3-format';

/** Shown where a figure is missing. */
export const missing = '–';

const minus = (text: string): string => text.replace('-', '−');

/**
 * A figure for reading: so many significant digits, trailing zeros kept, no exponent between a thousandth and ten
 * million. What is not finite reads as missing.
 */
export function figure(value: number | null, digits = 3): string {
  if (value === null || !Number.isFinite(value)) return missing;
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < 1e-3 || size >= 1e7) return minus(format(`.${digits - 1}e`)(value));
  if (size >= 10 ** digits) return minus(format('.0f')(value));
  return minus(format(`.${digits}r`)(value));
}

/** A share as a whole percentage with a narrow no-break space: `7 %`. */
export const percent = (share: number): string =>
  Number.isFinite(share) ? `${minus(format('.0f')(100 * share))}\u202f%` : missing;

export const degrees = (angle_deg: number): string => `${minus(format('.0f')(angle_deg))}°`;
