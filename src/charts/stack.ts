import type { Column } from './scales.ts';

export interface Stacked {
  readonly low: number;
  readonly high: number;
}

/**
 * Where the pieces of one stack begin and end: positive ones upwards from zero in the order given, negative ones
 * downwards. With a piece missing the sum is unknown, and the whole stack is a gap.
 */
export function stackAt(columns: readonly Column[], index: number): (Stacked | null)[] {
  let up = 0;
  let down = 0;
  const values = columns.map((column) => column[index] ?? NaN);
  if (!values.every(Number.isFinite)) return values.map(() => null);
  return values.map((value) => {
    if (value >= 0) return { low: up, high: (up += value) };
    return { high: down, low: (down += value) };
  });
}
