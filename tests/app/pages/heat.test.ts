import { describe, expect, it } from 'vitest';
import { heatColumns, heatDetail, heatSentence, heatTable } from '../../../src/app/pages/heat.ts';
import type { SolvedPoint } from '../../../src/sim/index.ts';
import { engine, labels, lovage, metric } from './solved.ts';

const read = (point: SolvedPoint): string =>
  heatSentence(point, labels, metric)
    .map(({ text }) => text)
    .join('');
const heating = (...crowns: number[]): SolvedPoint => ({
  ...lovage(),
  cylinders: crowns.map((crown, i) => ({
    ...lovage().cylinders[i]!,
    wallHeat: { crown, head: 0, liner: 0 },
  })),
});

describe('heatColumns', () => {
  it('adds up to what all cylinder walls of the engine take', () => {
    const sum = heatColumns(lovage()).whole.reduce((total, heat) => total + heat, 0);
    expect(sum / lovage().engine.wallHeat).toBeCloseTo(1, 9);
  });
});

describe('heatSentence', () => {
  it('names the cylinder with most heat and its distance from the mean: 120 W of 90, 120 and 90 is 20 %', () => {
    expect(read(heating(90, 120, 90))).toBe(
      'Cylinder 2 works its walls hardest: 120\u00a0W, 20\u202f% above the average cylinder.',
    );
  });

  it('compares nothing where there is one cylinder or all are equal', () => {
    expect(read(heating(1300))).toBe('The cylinder gives its walls 1.30\u00a0kW of heat.');
    expect(read(heating(500, 500))).toBe('Every cylinder gives its walls the same heat, 500\u00a0W.');
  });
});

describe('heatDetail', () => {
  it('says that wall temperatures are given, and which', () => {
    const cylinderHeat = {
      ...engine.cylinderHeat,
      crownTemperature: 523.15,
      headTemperature: 443.15,
      linerTemperature: 413.15,
    };
    expect(heatDetail(lovage(), { cylinderHeat }, metric)).toContain(
      'given here, not worked out: crowns 250\u00a0°C, heads 170\u00a0°C, liners 140\u00a0°C',
    );
  });

  it('gives no share of a fuel that is not there', () => {
    const { engine: figures } = lovage();
    const without = { ...lovage(), engine: { ...figures, balance: { ...figures.balance, fuel: 0 } } };
    expect(heatDetail(without, engine, metric)).not.toContain('energy in the fuel');
  });
});

describe('heatTable', () => {
  it('adds all seven cylinders up in its last line', () => {
    const { columns, foot } = heatTable(lovage(), labels, metric);
    expect(columns[0]!.values.length).toBe(7);
    expect(foot[0]!.cells.length).toBe(columns.length - 1);
    expect(heatTable(heating(90), ['1'], metric).foot).toEqual([]);
  });
});
