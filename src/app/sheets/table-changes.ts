import type { Design } from '../../design/schema/design.ts';
import { designValue } from './draft.ts';
import type { Section } from './sheet-sections.ts';

/** A table as it stands in a design: places of its rows and columns, and what fills it, row by row. */
export interface Grid {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  /** By the key of their field. */
  readonly fillings: Readonly<Record<string, readonly number[]>>;
}

type Changes = readonly { readonly path: string; readonly text: string }[];

export function gridOf(design: Design, { path, table }: Pick<Section, 'path' | 'table'>): Grid {
  const {
    [table!.rows]: rows,
    [table!.columns]: columns,
    ...fillings
  } = designValue(design, path) as Record<string, readonly number[]>;
  return { rows: rows!, columns: columns!, fillings };
}

/** What to type for another grid. */
export function gridChanges({ path, table }: Pick<Section, 'path' | 'table'>, grid: Grid): Changes {
  const lists = { [table!.rows]: grid.rows, [table!.columns]: grid.columns, ...grid.fillings };
  return Object.entries(lists).map(([key, list]) => ({ path: `${path}.${key}`, text: list.join('; ') }));
}

const filled = (
  grid: Grid,
  rows: readonly number[],
  columns: readonly number[],
  at: (filling: readonly number[], i: number, j: number) => number,
): Grid => ({
  rows,
  columns,
  fillings: Object.fromEntries(
    Object.entries(grid.fillings).map(([key, filling]) => [
      key,
      rows.flatMap((_, i) => columns.map((_, j) => Number(at(filling, i, j).toPrecision(6)))),
    ]),
  ),
});

/** One more row in the middle of the widest gap, filled with the means of its neighbours: what the table says stays the same. */
export function addRow(grid: Grid): Grid {
  const { rows, columns } = grid;
  const gaps = rows.slice(1).map((place, i) => place - rows[i]!);
  const after = gaps.indexOf(Math.max(...gaps));
  const middle = Number(((rows[after]! + rows[after + 1]!) / 2).toPrecision(6));
  return filled(
    grid,
    [...rows.slice(0, after + 1), middle, ...rows.slice(after + 1)],
    columns,
    (filling, i, j) => {
      const of = (row: number) => filling[row * columns.length + j]!;
      return i === after + 1 ? (of(after) + of(after + 1)) / 2 : of(i <= after ? i : i - 1);
    },
  );
}

/** One more column half as far again, filled like the last one: what the table says stays the same. */
export function addColumn(grid: Grid): Grid {
  const { rows, columns } = grid;
  const last = columns.length - 1;
  const next = Number((1.5 * columns[last]!).toPrecision(6));
  return filled(
    grid,
    rows,
    [...columns, next],
    (filling, i, j) => filling[i * columns.length + Math.min(j, last)]!,
  );
}

export const removeRow = (grid: Grid, row: number): Grid =>
  filled(
    grid,
    grid.rows.filter((_, i) => i !== row),
    grid.columns,
    (filling, i, j) => filling[(i < row ? i : i + 1) * grid.columns.length + j]!,
  );

export const removeColumn = (grid: Grid, column: number): Grid =>
  filled(
    grid,
    grid.rows,
    grid.columns.filter((_, j) => j !== column),
    (filling, i, j) => filling[i * grid.columns.length + (j < column ? j : j + 1)]!,
  );

/** A list's text with one of its places typed anew. */
export function withPiece(text: string, index: number, typed: string): string {
  const pieces = piecesOf(text);
  while (pieces.length <= index) pieces.push('');
  pieces[index] = typed;
  return pieces.join('; ');
}

/** What stands in the places of a list. */
export const piecesOf = (text: string): string[] => text.replace(/^\[|\]$/g, '').split(/\s*;\s*|,\s+/);
