import { describe, expect, it } from 'vitest';
import { wallNotes } from '../../../src/sim/results/wall-notes.ts';
import { mm } from '../../../src/sim/units.ts';
import { changed, presetEngine } from '../../helpers/engines.ts';

const engine = changed(presetEngine('dill-3'), { cylinderHeat: { solvesWalls: true } });
const texts = (of: typeof engine): readonly string[] =>
  wallNotes({ engine: of }, { cylinders: [] }).map(({ text }) => text);

describe('wallNotes', () => {
  it('says nothing of fins as they are cast, nor of any where wall temperatures are given', () => {
    expect(texts(engine)).toEqual([]);
    const fins = { height: 60 * mm, space: 1 * mm };
    const given = changed(engine, { cylinderHeat: { solvesWalls: false, cooling: { head: { fins } } } });
    expect(texts(given)).toEqual([]);
  });

  it('names the part whose fins are deeper than their law reaches, 0.0247 / 0.00148 = 16.7: 40 mm high, 1 mm apart are 19.1, 2.5 mm apart 13.3', () => {
    const head = (space: number) =>
      changed(engine, { cylinderHeat: { cooling: { head: { fins: { height: 40 * mm, space } } } } });
    expect(texts(head(2.5 * mm))).toEqual([]);
    expect(texts(head(1 * mm))).toEqual([
      expect.stringMatching(/^The fins of the head .* is 19\.1, and from 16\.7 on/),
    ]);
  });
});
