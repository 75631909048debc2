import { describe, expect, it } from 'vitest';
import { UNIT_SETS } from '../../../src/app/units/shown-units.ts';
import type { Measure } from '../../../src/app/units/shown-units.ts';
import { toSi } from '../../../src/design/unit-table.ts';

const [metric, metricHp, workshop] = UNIT_SETS as [
  (typeof UNIT_SETS)[0],
  (typeof UNIT_SETS)[0],
  (typeof UNIT_SETS)[0],
];

describe('ShownUnits', () => {
  it('shows 1 bar as 14.5 psi, 1 kW as 1.34 hp, 20 °C as 68 °F, 1 N m as 0.738 lb ft in the workshop', () => {
    expect(workshop.text('pressure', 1e5)).toBe('14.5\u00a0psi');
    expect(workshop.text('power', 1000)).toBe('1.34\u00a0hp');
    expect(workshop.text('temperature', 293.15)).toBe('68.0\u00a0°F');
    expect(workshop.text('torque', 1)).toBe('0.738\u00a0lb\u00a0ft');
  });

  it('puts the unit that people also know beside it, each way round', () => {
    expect(metric.both('power', 20e3)).toBe('20.0\u00a0kW (26.8\u00a0hp)');
    expect(metricHp.both('power', 20e3)).toBe('26.8\u00a0hp (20.0\u00a0kW)');
    expect(workshop.both('pressure', 1e5)).toBe('14.5\u00a0psi (1.00\u00a0bar)');
    expect(metric.both('torque', 30)).toBe('30.0\u00a0N\u00a0m');
  });

  it('takes mbar for bar below a hundredth of a bar, and psi as they are', () => {
    expect(metric.text('pressure', 83.2)).toBe('0.832\u00a0mbar');
    expect(metric.both('pressure', 83.2, 2)).toBe('0.83\u00a0mbar (0.012\u00a0psi)');
    expect(metric.text('pressure', 1000)).toBe('0.0100\u00a0bar');
    expect(workshop.text('pressure', 83.2)).toBe('0.0121\u00a0psi');
  });

  it('takes W for kW below one kilowatt, and hp as they are', () => {
    expect([642, -999, 1306].map((power) => metric.text('power', power))).toEqual([
      '642\u00a0W',
      '−999\u00a0W',
      '1.31\u00a0kW',
    ]);
    expect(metricHp.text('power', 642)).toBe('0.861\u00a0hp');
  });

  it('turns whole columns as it turns single figures, and leaves gaps as gaps', () => {
    const column = workshop.column('temperature', [273.15, null, 373.15]);
    expect([...column]).toEqual([expect.closeTo(32, 9), NaN, expect.closeTo(212, 9)]);
  });

  it('comes back to the same base value in every set and measure', () => {
    const measures: Measure[] = [
      'length',
      'pressure',
      'heat',
      'temperature',
      'consumption',
      'fuel flow',
      'speed',
    ];
    for (const set of UNIT_SETS)
      for (const measure of measures)
        expect(toSi(set.number(measure, 321.5), set.unit(measure)) / 321.5).toBeCloseTo(1, 12);
  });
});
