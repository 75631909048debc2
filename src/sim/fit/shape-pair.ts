import { contactPoints } from './contact.ts';
import type { FitKind, Pair } from './fit-check.ts';
import { gap } from './gap.ts';
import type { RoundedShape } from './rounded-shape.ts';

/** A pair of parts of one row, each of one or more outlines. */
export function shapePair(
  kind: FitKind,
  rowIndex: number,
  parts: readonly [string, string],
  a: readonly RoundedShape[],
  b: readonly RoundedShape[],
): Pair {
  return {
    kind,
    parts,
    gapNow: () => {
      let least = Infinity;
      for (const one of a) for (const other of b) least = Math.min(least, gap(one, other));
      return least;
    },
    contactNow: () => {
      const all = a.flatMap((one) => b.map((other) => ({ one, other, gap: gap(one, other) })));
      const nearest = all.reduce((best, each) => (each.gap < best.gap ? each : best));
      return {
        kind,
        parts,
        rowIndex,
        gap: nearest.gap,
        ...contactPoints(nearest.one, nearest.other, nearest.gap),
      };
    },
  };
}
