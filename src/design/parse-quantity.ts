import { failure, success } from '../sim/outcome.ts';
import type { Outcome } from '../sim/outcome.ts';
import { withExponents } from './power-of-ten.ts';
import { UNITS, toSi } from './unit-table.ts';
import type { Dimension, Unit } from './unit-table.ts';

/** A typed quantity: its value in base SI, and the unit in which it was meant. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

const NUMBER = String.raw`[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?`;
const WITH_FRACTION = /^([+-]?)(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)(?=\s|[a-z"″]|$)/i;
const GROUPED = /^([+-]?\d{1,3}(?:[\s'’]\d{3})+(?:[.,]\d+)?)/;
const PLAIN_NUMBER = new RegExp(`^(${NUMBER})`, 'i');
const AMBIGUOUS = /^[+-]?[1-9]\d{0,2},\d{3}$/;

/**
 * Read a quantity as people type it: "52", "52mm", "3.2 in", "3 1/8 in", "0,85", "80 %", "5 psi gauge", "-3°",
 * "4.3 × 10⁻⁹".
 * A bare number is meant in `own`, the field's own unit. The result is base SI.
 *
 * Pressures: a field asks either for absolute pressure or for pressure above ambient; a bare unit is meant as the
 * field asks, and a unit that says otherwise ("psi absolute" in a gauge field) is refused, not converted, because
 * the ambient pressure is another input.
 */
export function parseQuantity(text: string, own: Unit): Outcome<Quantity> {
  const tidy = withExponents(
    text
      .normalize('NFC')
      .trim()
      .replace(/[−–]/g, '-')
      .replace(/[\u00a0\u2009\u202f]/g, ' '),
  );
  if (tidy === '') return refuse('nothing is typed');
  const number = readNumber(tidy);
  if (!number.ok) return number;
  const rest = tidy.slice(number.value.length).trim();
  const unit = rest === '' ? success(own) : readUnit(rest, own);
  if (!unit.ok) return unit;
  const value = toSi(number.value.value, unit.value);
  return Number.isFinite(value)
    ? success({ value, unit: unit.value })
    : refuse(`“${text}” is too large for a number`);
}

function readNumber(text: string): Outcome<{ value: number; length: number }> {
  const fraction = WITH_FRACTION.exec(text);
  if (fraction) {
    const [all, sign, whole, over, under] = fraction;
    if (Number(under) === 0) return refuse(`“${all}” divides by nothing`);
    const size = Number(whole ?? 0) + Number(over) / Number(under);
    return success({ value: sign === '-' ? -size : size, length: all.length });
  }
  const found = (GROUPED.exec(text) ?? PLAIN_NUMBER.exec(text))?.[1];
  if (found === undefined) return refuse(`“${text}” does not begin with a number`);
  if (AMBIGUOUS.test(found)) {
    const [whole, rest] = found.split(',');
    return refuse(`“${found}” may mean ${whole}${rest} or ${whole}.${rest}: write it as one of these`);
  }
  if (/^[.,]\d/.test(text.slice(found.length))) return refuse(`“${text}” has more than one decimal mark`);
  return success({ value: Number(found.replace(/[\s'’]/g, '').replace(',', '.')), length: found.length });
}

const GAUGE_WORDS = /\s*\(?\b(gauge|above ambient|over ambient|g)\)?$/i;
const ABSOLUTE_WORDS = /\s*\(?\b(absolute|abs|a)\)?$/i;

function readUnit(typed: string, own: Unit): Outcome<Unit> {
  const pressure = own.dimension === 'pressure' || own.dimension === 'gauge pressure';
  if (pressure) return readPressureUnit(typed, own);
  if (typed.toLowerCase() === own.symbol.toLowerCase()) return success(own);
  const remark = own.symbol.startsWith('° ') ? own.symbol.slice(2) : null;
  const bare =
    remark && typed.toUpperCase().endsWith(remark) ? typed.slice(0, -remark.length).trim() || '°' : typed;
  const fitting = findUnit(bare, own.dimension);
  if (fitting) return success(fitting);
  return refuse(wrongUnit(typed, own.dimension));
}

function readPressureUnit(typed: string, own: Unit): Outcome<Unit> {
  const wantsGauge = own.dimension === 'gauge pressure';
  const joined = /^(bar|psi)(g|a)$/i.exec(typed);
  const saysGauge = joined ? joined[2]!.toLowerCase() === 'g' : GAUGE_WORDS.test(typed);
  const saysAbsolute = joined ? !saysGauge : ABSOLUTE_WORDS.test(typed);
  const bare = joined ? joined[1]! : typed.replace(saysGauge ? GAUGE_WORDS : ABSOLUTE_WORDS, '');
  const unit = findUnit(bare, 'pressure');
  if (!unit) return refuse(wrongUnit(typed, own.dimension));
  if (wantsGauge && saysAbsolute) {
    return refuse(
      `“${typed}” is absolute, but this is asked for above ambient: subtract the ambient pressure`,
    );
  }
  if (!wantsGauge && saysGauge) {
    return refuse(`“${typed}” is above ambient, but this is asked for absolute: add the ambient pressure`);
  }
  return success({ ...unit, dimension: own.dimension });
}

/** The unit that is spelled like this, of one dimension or of any. Case counts only where it decides. */
function findUnit(spelling: string, dimension?: Dimension): Unit | undefined {
  const among = dimension ? UNITS.filter((unit) => unit.dimension === dimension) : UNITS;
  const lower = spelling.toLowerCase();
  return (
    among.find((unit) => unit.spellings.includes(spelling)) ??
    among.find((unit) => unit.spellings.some((each) => each.toLowerCase() === lower))
  );
}

function wrongUnit(typed: string, dimension: Dimension): string {
  const base = dimension === 'gauge pressure' ? 'pressure' : dimension;
  const accepted = UNITS.filter((unit) => unit.dimension === base && unit.symbol !== '').map(
    (unit) => unit.symbol,
  );
  const other = findUnit(typed);
  const what = other
    ? `“${typed}” measures ${other.dimension}, not ${dimension}`
    : `“${typed}” is not a unit known here`;
  return `${what}; use ${accepted.join(', ')}`;
}

const refuse = (message: string): Outcome<never> => failure([{ path: '', message }]);
