import type { Column } from './scales.ts';
import { stackAt } from './stack.ts';
import type { Stacked } from './stack.ts';

/** What each bar is made of, series by series: each from zero where they stand `together`, else on top of each other. */
export const barPieces = (
  series: readonly Column[],
  count: number,
  together: boolean,
): (readonly (Stacked | null)[])[] =>
  Array.from({ length: count }, (_, i) =>
    together ? series.map((values) => fromZero(values[i] ?? NaN)) : stackAt(series, i),
  );

const fromZero = (value: number): Stacked | null =>
  Number.isFinite(value) ? { low: Math.min(0, value), high: Math.max(0, value) } : null;

/**
 * Where the bars of a pinned result end: each series' own where they stand together, else the whole stack's. None unless
 * every series has an earlier one.
 */
export function pinnedEnds(
  pins: readonly (Column | undefined)[],
  count: number,
  together: boolean,
): (readonly (number | null)[])[] {
  const all = pins.flatMap((pin) => (pin ? [pin] : []));
  return Array.from({ length: count }, (_, i) => {
    if (all.length < pins.length) return [];
    if (together) return all.map((values) => values[i] ?? null);
    return [all.reduce((sum, values) => sum + (values[i] ?? NaN), 0)];
  });
}
