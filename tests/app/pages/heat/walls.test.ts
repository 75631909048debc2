import { describe, expect, it } from 'vitest';
import { crownSentence, hottestOf, pathsTable, solvedWalls } from '../../../../src/app/pages/heat/walls.ts';
import type { WallFigures } from '../../../../src/sim/index.ts';
import { coolingChanged } from '../../../../src/sim/study/walls/solved-with.ts';
import { kelvinFromCelsius } from '../../../../src/sim/units.ts';
import { presetEngine, solveAt, solved } from '../../../helpers/engines.ts';
import { lovage, metric } from '../solved.ts';

const point = solved(solveAt(coolingChanged(presetEngine('caraway-1'), {}), 6000));
const [only] = solvedWalls(point)!;
const limit = kelvinFromCelsius(300);
const text = (walls: readonly WallFigures[]): string =>
  crownSentence(walls, ['1', '2'], limit, metric)
    .map((phrase) => phrase.text)
    .join('');
/** The same walls with another crown, what its gas gives it, and another wind. */
const like = (crown_C: number, more: number, airSpeed: number): WallFigures => ({
  ...only!,
  crown: kelvinFromCelsius(crown_C),
  fromGas: { ...only!.fromGas, crown: more * only!.fromGas.crown },
  airSpeed,
});

describe('solvedWalls', () => {
  it('has none where wall temperatures are given', () => {
    expect(solvedWalls(lovage())).toBeNull();
  });
});

describe('crownSentence', () => {
  it('tells a single crown against what is set for it', () => {
    expect(text([like(310, 1, 20)])).toMatch(/^The crown comes to 310\s°C, above the 300\s°C set for it\.$/);
    expect(text([like(280, 1, 20)])).toMatch(/^The crown comes to 280\s°C; 300\s°C are set for it\.$/);
  });

  it('gives the wake as the reason before the fire, and the fire before none', () => {
    expect(text([like(250, 1, 20), like(290, 1.1, 12)])).toMatch(
      /of 2 runs hottest.*wake of the row before it/,
    );
    expect(text([like(290, 1.1, 20), like(250, 0.9, 20)])).toMatch(/of 1 runs hottest.*10\s% more heat/);
    expect(text([like(270, 1, 20), like(269, 1, 20)])).toMatch(/but all are much alike/);
    expect(hottestOf([like(270, 1, 20), like(271, 1, 20)])).toBe(1);
  });
});

describe('pathsTable', () => {
  it('sums heat to air, crankcase and inner paths of all cylinders at its foot', () => {
    const { columns, foot } = pathsTable([only!, only!], ['1', '2'], metric);
    const places = columns.findIndex(({ heading }) => heading.startsWith('head to air'));
    const [each] = Array.from(columns[places]!.values as readonly number[]);
    expect(each).toBeCloseTo(metric.number('heat', only!.headToAir), 9);
    // Cells of the foot begin with the second column, and show four digits.
    expect(Number(foot[0]!.cells[places - 1])).toBeCloseTo(2 * each!, 0);
    expect(pathsTable([only!], ['1'], metric).foot).toEqual([]);
  });
});
