import { describe, expect, it } from 'vitest';
import { enterAll, freshDraft, setFitted } from '../../../src/app/sheets/draft.ts';
import { sheetOf } from '../../../src/app/sheets/sheet-sections.ts';
import {
  addColumn,
  addRow,
  gridChanges,
  gridOf,
  piecesOf,
  removeColumn,
  removeRow,
  withPiece,
} from '../../../src/app/sheets/table-changes.ts';
import { DischargeTable } from '../../../src/sim/exchange/discharge-table.ts';
import { preset, sound } from '../../design/designs.ts';

const draft = sound(setFitted(freshDraft(preset('lovage-7'), null), 'windows.exhaustTable', true));
const section = sheetOf('windows', draft.design).main.find(({ path }) => path === 'windows.exhaustTable')!;
const grid = gridOf(draft.design, section);
/** What a grid says at an opening and a pressure ratio. */
const says = ({ rows, columns, fillings }: typeof grid, opening: number, ratio: number) =>
  new DischargeTable(
    { openings: rows, pressureRatios: columns, forward: [], backward: [] },
    fillings['forward']!,
  ).at(opening, ratio);

describe('a table on its sheet', () => {
  it('says the same with one more row, and with one more column, which the design takes', () => {
    for (const longer of [addRow(grid), addColumn(grid)]) {
      expect(longer.rows.length + longer.columns.length).toBe(grid.rows.length + grid.columns.length + 1);
      for (const [opening, ratio] of [
        [0.1, 1.2],
        [0.33, 3],
        [0.9, 7],
      ])
        expect(says(longer, opening!, ratio!)).toBeCloseTo(says(grid, opening!, ratio!), 5);
      const changed = sound(enterAll(draft, gridChanges(section, longer)));
      expect(gridOf(changed.design, section)).toEqual(longer);
    }
  });

  it('is what it was when the added row or column is taken out', () => {
    const row = addRow(grid).rows.findIndex((place) => !grid.rows.includes(place));
    expect(removeRow(addRow(grid), row)).toEqual(grid);
    expect(removeColumn(addColumn(grid), grid.columns.length)).toEqual(grid);
  });

  it('keeps what is typed in one place, whatever it is, and the other places as they are', () => {
    expect(withPiece('0.7; 0.8; 0.9', 1, '0,8x')).toBe('0.7; 0,8x; 0.9');
    expect(piecesOf('0.7; 0,8x; 0.9')).toEqual(['0.7', '0,8x', '0.9']);
    expect(withPiece('0.7', 2, '1')).toBe('0.7; ; 1');
  });
});
