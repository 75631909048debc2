import { powerOfTen } from './power-of-ten.ts';
import { UNITS, fromSi } from './unit-table.ts';
import type { Unit } from './unit-table.ts';

/** A number for people: at most `digits` significant figures, no trailing zeros, a power of ten only where it must be. */
export function formatNumber(value: number, digits = 4): string {
  if (!Number.isFinite(value)) return 'not a number';
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < 1e-4 || size >= 1e9) return powerOfTen(value, digits).replace(/\.?0+(?=\u202f×)/, '');
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  const fixed = value.toFixed(Math.min(decimals, 12));
  return String(Number(fixed)).replace('-', '−');
}

/** An SI value in a unit, with its symbol: `52 mm`, `80 %`, `25° BTDC`. */
export function formatQuantity(value: number, unit: Unit, digits = 4): string {
  const number = formatNumber(fromSi(value, unit), digits);
  if (unit.symbol === '') return number;
  return unit.symbol.startsWith('°') && unit.dimension === 'angle'
    ? number + unit.symbol
    : `${number} ${unit.symbol}`;
}

/** The unit with this symbol, for reports that choose their own. */
export function unitNamed(symbol: string): Unit {
  const found = UNITS.find((unit) => unit.symbol === symbol);
  if (!found) throw new Error(`no unit ${symbol}`);
  return found;
}
