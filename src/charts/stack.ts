import type { Column } from './scales.ts';

export interface Stacked {
  readonly low: number;
  readonly high: number;
}

/**
 * Where the pieces of one stack begin and end: positive ones upwards from zero in the order given, negative ones
 * downwards. A missing piece is null and takes no room.
 */
export function stackAt(columns: readonly Column[], index: number): (Stacked | null)[] {
  let up = 0;
  let down = 0;
  return columns.map((column) => {
    const value = column[index] ?? NaN;
    if (!Number.isFinite(value)) return null;
    if (value >= 0) return { low: up, high: (up += value) };
    return { high: down, low: (down += value) };
  });
}
