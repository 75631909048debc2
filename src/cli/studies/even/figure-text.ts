import type { Kind } from '../../../sim/study/even/names.ts';
import { bar, celsiusFromKelvin, deg, mm, percent } from '../../../sim/units.ts';

interface Shown {
  readonly unit: string;
  readonly number: (value: number) => number;
  readonly digits: number;
  /** Of a difference, where that is not the same. */
  readonly difference?: (value: number) => number;
}

const SHOWN: Readonly<Record<Kind, Shown>> = {
  angle: { unit: '°', number: (value) => value / deg, digits: 2 },
  length: { unit: 'mm', number: (value) => value / mm, digits: 3 },
  ratio: { unit: '', number: (value) => value, digits: 3 },
  share: { unit: '%', number: (value) => value / percent, digits: 2 },
  'time-area': { unit: 's cm²/m³', number: (value) => value * 1e4, digits: 2 },
  mass: { unit: 'mg', number: (value) => value * 1e6, digits: 2 },
  pressure: { unit: 'bar', number: (value) => value / bar, digits: 2 },
  temperature: { unit: '°C', number: celsiusFromKelvin, digits: 1, difference: (value) => value },
  heat: { unit: 'W', number: (value) => value, digits: 0 },
};

export const fixed = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return (Number(text) === 0 ? text.replace('-', '') : text).replace('-', '−');
};

/** A figure by its kind, without its unit. */
export const figureText = (kind: Kind, value: number): string =>
  fixed(SHOWN[kind].number(value), SHOWN[kind].digits);

/** A difference of two figures of a kind, without its unit. */
export const differenceText = (kind: Kind, value: number): string => {
  const { number, digits, difference } = SHOWN[kind];
  return fixed((difference ?? number)(value), digits);
};

export const unitOf = (kind: Kind): string => SHOWN[kind].unit;
