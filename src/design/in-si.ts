import { splitKey, toSi } from './unit-table.ts';
import type { Suffix } from './unit-table.ts';

type WithoutUnit<K> = K extends `${infer Name}_${Suffix}` ? Name : K;

/** The same values with the units taken off the keys: `bore_mm: 52` becomes `bore: 0.052`. */
export type InSi<T> = T extends readonly (infer U)[]
  ? InSi<U>[]
  : T extends object
    ? { [K in keyof T as WithoutUnit<K>]: InSi<T[K]> }
    : T;

/** Convert everything in a piece of a design to base SI, by the units that its keys wear. */
export function inSi<T>(piece: T): InSi<T> {
  return convert(piece, (value) => value) as InSi<T>;
}

function convert(piece: unknown, number: (value: number) => number): unknown {
  if (typeof piece === 'number') return number(piece);
  if (Array.isArray(piece)) return piece.map((item) => convert(item, number));
  if (piece === null || typeof piece !== 'object') return piece;
  return Object.fromEntries(
    Object.entries(piece).map(([key, value]) => {
      const { name, unit, suffix } = splitKey(key);
      return [name, convert(value, suffix ? (plain) => toSi(plain, unit) : (plain) => plain)];
    }),
  );
}
