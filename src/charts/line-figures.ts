import type { Axis, Line, TableColumn } from './chart-types.ts';
import { difference } from './difference.ts';
import { figureAmong, reachOf } from './format.ts';
import { readAt } from './read-at.ts';
import { withUnit } from './with-unit.ts';

/** What lines over the same `xs` show at one place, and how far that is from what is pinned; nothing at no place. */
export const lineReadings = (xs: ArrayLike<number>, lines: readonly Line[], at: number | null) =>
  lines.map(({ label, ys, colour, dashed = false, term, pinned }) => {
    const value = at === null ? null : readAt(xs, ys, at);
    const before = at === null || !pinned ? null : readAt(pinned.xs, pinned.ys, at);
    return {
      label,
      colour,
      dashed,
      term,
      text: at === null ? '' : figureAmong(value, reachOf(Array.from(ys))),
      against: before === null ? '' : difference(value, before, false),
    };
  });

/** The figures behind lines over the same `xs`; those of what is pinned beside them, with its own xs where they differ. */
export function lineTable(xs: ArrayLike<number>, x: Axis, y: Axis, lines: readonly Line[]): TableColumn[] {
  const heading = withUnit(x.quantity, x.unit);
  const pins = lines.flatMap(({ label, pinned }) => (pinned ? [{ label, pinned }] : []));
  const first = pins[0]?.pinned.xs;
  return [
    { heading, values: xs },
    ...lines.map(({ label, ys, term }) => ({ heading: withUnit(label, y.unit), values: ys, term })),
    ...(first && !same(first, xs) ? [{ heading: `pinned: ${heading}`, values: first }] : []),
    ...pins.map(({ label, pinned }) => ({
      heading: `pinned: ${withUnit(label, y.unit)}`,
      values: pinned.ys,
    })),
  ];
}

const same = (a: ArrayLike<number>, b: ArrayLike<number>): boolean =>
  a.length === b.length && Array.from(a).every((value, i) => value === b[i]);
