import { describe, expect, it } from 'vitest';
import { FIELDS } from '../../../src/design/fields.ts';
import { setValue } from '../../../src/design/set-value.ts';
import { openPath } from '../../../src/design/path.ts';
import { PARTS, sheetOf } from '../../../src/app/sheets/sheet-sections.ts';
import type { Section } from '../../../src/app/sheets/sheet-sections.ts';
import { LEFT_OFF, countsElsewhere, preset } from '../../design/designs.ts';
import { enter, freshDraft, setFitted } from '../../../src/app/sheets/draft.ts';
import { sound } from '../../design/designs.ts';

const allFitted = LEFT_OFF.reduce(
  (draft, path) => sound(setFitted(draft, path, true)),
  freshDraft(preset('lovage-7'), null),
).design;
const shownIn = (sections: readonly Section[]): string[] =>
  sections.flatMap(({ rows }) => rows.map(({ field }) => field.path));

describe('sheetOf', () => {
  it('shows every field that counts once, on one sheet, but for the version and the name of a correction', () => {
    const shown = PARTS.flatMap(({ key }) => {
      const { main, details } = sheetOf(key, allFitted);
      return [...shownIn(main), ...shownIn(details)];
    });
    const wanted = FIELDS.map(({ path }) => path).filter(
      (path) =>
        path !== 'version' && path !== 'crank.corrections[].cylinder' && !countsElsewhere(path, allFitted),
    );
    expect(shown.sort()).toEqual(wanted.sort());
  });

  it('asks of a centrifugal blower what it has: its wheel, gears and limits, no lobes and no gaps', () => {
    const wheel = sound(setValue(preset('lovage-7'), 'blower.kind', 'centrifugal'));
    const { main, details } = sheetOf('blower', wheel);
    const shown = [...shownIn(main), ...shownIn(details)];
    expect(shown).toContain('blower.impeller.blades');
    expect(shown).toContain('blower.gears[].driver');
    expect(shown.filter((path) => /lobes|Gap|helix|rotorLength|volumeRatio|displacement/.test(path))).toEqual(
      [],
    );
    const roots = shownIn(sheetOf('blower', preset('lovage-7')).main);
    expect(roots).toContain('blower.lobes');
    expect(roots.filter((path) => /impeller|volumeRatio/.test(path))).toEqual([]);
  });

  it('folds away what the schema calls a detail, and nothing else', () => {
    for (const { key } of PARTS) {
      const { main, details } = sheetOf(key, allFitted);
      expect(main.flatMap(({ rows }) => rows).filter(({ field }) => field.detail)).toEqual([]);
      expect(details.flatMap(({ rows }) => rows).filter(({ field }) => !field.detail)).toEqual([]);
    }
  });

  it('gives a cell to each item of a list, under a path that the design takes', () => {
    const design = preset('angelica-14');
    const row = sheetOf('crank', design)
      .main.flatMap(({ rows }) => rows)
      .find(({ field }) => field.path === 'crank.rows[].stagger_deg')!;
    expect(row.cells).toEqual([
      { path: 'crank.rows[0].stagger_deg', name: 'row A' },
      { path: 'crank.rows[1].stagger_deg', name: 'row B' },
    ]);
  });

  it('gives paths under which every numeric field of every sheet can be typed', () => {
    const draft = freshDraft(allFitted, null);
    for (const { key } of PARTS) {
      const { main, details } = sheetOf(key, draft.design);
      for (const { field, cells } of [...main, ...details].flatMap(({ rows }) => rows)) {
        if (field.kind !== 'number' && field.kind !== 'integer') continue;
        const { path } = cells.at(-1)!;
        expect(openPath(path)).toBe(field.path);
        expect(enter(draft, path, 'abc').held, path).toEqual({ [path]: 'abc' });
      }
    }
  });

  it('asks nothing of a restrictor that is not fitted', () => {
    const sections = sheetOf('fuel', preset('lovage-7')).main;
    expect(sections.find(({ path }) => path === 'fuel.restrictor')).toMatchObject({
      fitted: false,
      rows: [],
    });
  });
});
