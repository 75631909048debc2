import { describe, expect, it } from 'vitest';
import {
  breathingColumns,
  breathingSentence,
  cylinderTable,
  windowPressures,
} from '../../../src/app/pages/breathing.ts';
import type { SolvedPoint } from '../../../src/sim/index.ts';
import { geometry, labels, lovage, metric, workshop } from './solved.ts';

const read = (point: SolvedPoint, names = labels): string =>
  breathingSentence(point, names)
    .map(({ text }) => text)
    .join('');
const keeping = (...kept: number[]): SolvedPoint => ({
  ...lovage(),
  cylinders: kept.map((chargingEfficiency, i) => ({ ...lovage().cylinders[i]!, chargingEfficiency })),
});

describe('breathingSentence', () => {
  it('names the cylinder of Lovage 7 that keeps most, and that is where the table has its largest figure', () => {
    const kept = lovage().cylinders.map((cylinder) => cylinder.chargingEfficiency);
    const most = kept.indexOf(Math.max(...kept));
    expect(read(lovage())).toContain(`Cylinder ${labels[most]} gets most`);
  });

  it('gives the distance of least from most: 0.45 of 0.5 is 10 % less', () => {
    expect(read(keeping(0.48, 0.5, 0.45))).toBe(
      'Cylinder 2 gets most: it keeps 0.500 of its swept volume. Cylinder 3 gets least, 0.450: 10\u202f% less.',
    );
  });

  it('calls equal cylinders equal, and compares nothing where there is one', () => {
    expect(read(keeping(0.5, 0.5))).toBe('All cylinders get the same: each keeps 0.50 of its swept volume.');
    expect(read(keeping(0.5))).toMatch(/^The one cylinder keeps 0\.50 of its swept volume, of /);
  });

  it('says nothing when a cylinder’s figure is missing', () => {
    expect(read(keeping(0.5, NaN))).toBe('');
  });
});

describe('breathingColumns', () => {
  it('shows the volume between clearance and clearance + swept, and closed windows at own top dead centre', () => {
    const columns = breathingColumns(lovage(), 0, 0);
    const { clearanceVolume, sweptVolume } = geometry.cylinders[0]!;
    expect(Math.min(...columns.volume)).toBeCloseTo(clearanceVolume, 8);
    expect(Math.max(...columns.volume)).toBeCloseTo(clearanceVolume + sweptVolume, 8);
    expect([columns.exhaustArea[0], columns.transferArea[0]]).toEqual([0, 0]);
    expect([columns.angle_deg[0], columns.angle_deg.at(-1)]).toEqual([0, expect.closeTo(360, 6)]);
  });

  it('keeps purity between 0 and 100 %', () => {
    const { purity_percent } = breathingColumns(lovage(), 3, 0);
    expect(Math.min(...purity_percent)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...purity_percent)).toBeLessThanOrEqual(100);
  });
});

describe('windowPressures', () => {
  it('takes in all of passage and collector with room to spare', () => {
    const columns = breathingColumns(lovage(), 0, 0);
    const [low, high] = windowPressures(columns);
    expect(low).toBeLessThan(Math.min(...columns.collector));
    expect(high).toBeGreaterThan(Math.max(...columns.passage));
  });
});

describe('cylinderTable', () => {
  it('has a row for each cylinder and a spread under every figure', () => {
    const { columns, foot } = cylinderTable(lovage(), labels, metric);
    expect(columns.every(({ values }) => values.length === 7)).toBe(true);
    expect(foot.map(({ label }) => label)).toEqual(['mean', 'range / mean', 'standard deviation']);
    for (const { cells } of foot) expect(cells.length).toBe(columns.length - 1);
  });

  it('heads its columns with the reader’s units, and gives figures in them', () => {
    const peak = (units: typeof metric) =>
      cylinderTable(lovage(), labels, units).columns.find(({ heading }) => heading.startsWith('peak, '))!;
    expect([peak(metric).heading, peak(workshop).heading]).toEqual(['peak, bar', 'peak, psi']);
    expect((peak(workshop).values[0] as number) / (peak(metric).values[0] as number)).toBeCloseTo(14.5038, 4);
  });

  it('shows no spread of one cylinder', () => {
    expect(cylinderTable(keeping(0.5), ['1'], metric).foot).toEqual([]);
  });
});
