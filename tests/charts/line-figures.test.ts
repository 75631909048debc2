import { describe, expect, it } from 'vitest';
import type { Line } from '../../src/charts/chart-types.ts';
import { lineReadings, lineTable } from '../../src/charts/line-figures.ts';

const xs = [1000, 2000, 3000];
const power: Line = { label: 'power', ys: [2, 4, 6], colour: 'var(--cylinder)', term: 'power' };
const pinnedAt = (at: readonly number[]): Line => ({ ...power, pinned: { xs: at, ys: [1, 3, 5] } });
const [speed, kilowatts] = [
  { quantity: 'speed', unit: 'rpm' },
  { quantity: 'power', unit: 'kW' },
];

describe('lineReadings', () => {
  it('read between two points, and how far that is from what is pinned', () => {
    const [reading] = lineReadings(xs, [pinnedAt(xs)], 2500);
    expect(reading).toMatchObject({ text: '5.00', against: '+1.0', dashed: false });
  });

  it('say nothing at no place, and of no pin', () => {
    expect(lineReadings(xs, [pinnedAt(xs)], null)[0]).toMatchObject({ text: '', against: '' });
    expect(lineReadings(xs, [power], 2500)[0]!.against).toBe('');
  });

  it('are missing beyond the ends of a line', () => {
    expect(lineReadings(xs, [power], 4000)[0]!.text).toBe('–');
  });
});

describe('lineTable', () => {
  const headings = (line: Line) => lineTable(xs, speed!, kilowatts!, [line]).map(({ heading }) => heading);

  it('has a column for the places and one for each line, with units', () => {
    expect(headings(power)).toEqual(['speed, rpm', 'power, kW']);
  });

  it('adds what is pinned, with places of its own only where they are others', () => {
    expect(headings(pinnedAt(xs))).toEqual(['speed, rpm', 'power, kW', 'pinned: power, kW']);
    expect(headings(pinnedAt([900, 2000, 3000]))).toEqual([
      'speed, rpm',
      'power, kW',
      'pinned: speed, rpm',
      'pinned: power, kW',
    ]);
  });
});
