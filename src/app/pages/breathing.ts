import type { TableColumn, TableFoot } from '../../charts/chart-types.ts';
import { figure } from '../../charts/format.ts';
import type { SolvedPoint } from '../../sim/index.ts';
import { bar, cc, celsiusFromKelvin, deg, gram, mm2 } from '../../sim/units.ts';
import type { Phrase } from '../headline.ts';
import { samplesOfFirstTurn } from '../turn-columns.ts';
import { spreadOf } from './spread.ts';
import { figured, plain, shareText } from './words.ts';

/** One cylinder over the first turn of the period. */
export interface BreathingColumns {
  readonly angle_deg: Float64Array;
  readonly exhaustArea_mm2: Float64Array;
  readonly transferArea_mm2: Float64Array;
  readonly cylinder_bar: Float64Array;
  readonly passage_bar: Float64Array;
  readonly collector_bar: Float64Array;
  /** Into the cylinder, and out of it to the collector; negative where it flows back. */
  readonly transfer_gPerS: Float64Array;
  readonly exhaust_gPerS: Float64Array;
  readonly purity_percent: Float64Array;
  readonly volume_cc: Float64Array;
}

export function breathingColumns(
  { traces }: SolvedPoint,
  index: number,
  collectorIndex: number,
): BreathingColumns {
  const count = samplesOfFirstTurn(traces.angle);
  const part = (column: Float64Array, unit: number): Float64Array =>
    column.subarray(0, count).map((value) => value / unit);
  const cylinder = traces.cylinders[index]!;
  return {
    angle_deg: part(traces.angle, deg),
    exhaustArea_mm2: part(cylinder.exhaustArea, mm2),
    transferArea_mm2: part(cylinder.transferArea, mm2),
    cylinder_bar: part(cylinder.pressure, bar),
    passage_bar: part(traces.passages[index]!.pressure, bar),
    collector_bar: part(traces.collectors[collectorIndex]!.pressure, bar),
    transfer_gPerS: part(cylinder.transferFlow, gram),
    exhaust_gPerS: part(cylinder.exhaustFlow, gram),
    purity_percent: part(cylinder.purity, 0.01),
    volume_cc: part(cylinder.volume, cc),
  };
}

/** The stretch of pressure in which the windows work; the rest of the cylinder's line leaves the chart at the top. */
export function windowPressures_bar({ passage_bar, collector_bar }: BreathingColumns): [number, number] {
  const low = Math.min(...passage_bar, ...collector_bar);
  const high = Math.max(...passage_bar, ...collector_bar);
  return [low - 0.35 * (high - low) - 0.02, high + 0.9 * (high - low) + 0.04];
}

/** Figures cylinder by cylinder, and under them how far they spread. */
export function cylinderTable(
  { cylinders }: SolvedPoint,
  labels: readonly string[],
): { columns: TableColumn[]; foot: TableFoot[] } {
  const pick = (of: (cylinder: SolvedPoint['cylinders'][number]) => number): number[] => cylinders.map(of);
  const figures: { heading: string; values: number[]; digits: number }[] = [
    { heading: 'delivered, × swept', values: pick((c) => c.deliveryRatio), digits: 3 },
    { heading: 'kept, × swept', values: pick((c) => c.chargingEfficiency), digits: 3 },
    { heading: 'kept of delivered, %', values: pick((c) => 100 * c.trappingEfficiency), digits: 3 },
    { heading: 'purity, %', values: pick((c) => 100 * c.purity), digits: 3 },
    { heading: 'imep, bar', values: pick((c) => c.imep / bar), digits: 3 },
    { heading: 'peak, bar', values: pick((c) => c.peakPressure / bar), digits: 3 },
    { heading: 'peak after own TDC, °', values: pick((c) => c.peakPressureAngle / deg), digits: 3 },
    {
      heading: 'exhaust, °C',
      values: pick((c) => celsiusFromKelvin(c.exhaustTemperature)),
      digits: 3,
    },
  ];
  const spreads = figures.map(({ values }) => spreadOf(values));
  const several = cylinders.length > 1;
  // A range over a mean says nothing of angles and degrees Celsius, whose zero is a convention.
  const relative = (i: number): boolean => i < 6;
  return {
    columns: [
      { heading: 'cylinder', values: labels },
      ...figures,
      { heading: 'misfire', values: cylinders.map((c) => (c.misfire ? 'expected' : 'no')) },
    ],
    foot: several
      ? [
          { label: 'mean', cells: [...spreads.map((s) => figure(s?.mean ?? null, 3)), ''] },
          {
            label: 'range / mean',
            cells: [...spreads.map((s, i) => (s && relative(i) ? shareText(s.range) : '')), ''],
          },
          {
            label: 'standard deviation',
            cells: [...spreads.map((s) => figure(s?.deviation ?? null, 2)), ''],
          },
        ]
      : [],
  };
}

/** Which cylinder gets most and which least, by what it keeps. */
export function breathingSentence({ cylinders }: SolvedPoint, labels: readonly string[]): Phrase[] {
  const spread = spreadOf(cylinders.map((cylinder) => cylinder.chargingEfficiency));
  if (spread === null) return [];
  const { mostIndex, leastIndex, most, least, range } = spread;
  if (cylinders.length === 1) {
    const [{ deliveryRatio }] = cylinders as [SolvedPoint['cylinders'][number]];
    return [
      plain('The one cylinder keeps '),
      figured(`${figure(most, 2)} of its swept volume`),
      plain(`, of ${figure(deliveryRatio, 3)} delivered.`),
    ];
  }
  if (range < 5e-4) {
    return [
      plain('All cylinders get the same: each keeps '),
      figured(`${figure(most, 2)} of its swept volume`),
      plain('.'),
    ];
  }
  return [
    figured(`Cylinder ${labels[mostIndex]} gets most`),
    plain(`: it keeps ${figure(most, 3)} of its swept volume. `),
    figured(`Cylinder ${labels[leastIndex]} gets least`),
    plain(`, ${figure(least, 3)}: ${shareText(1 - least / most)} less.`),
  ];
}

export function breathingDetail({ cylinders }: SolvedPoint): string {
  const spread = spreadOf(cylinders.map((cylinder) => cylinder.chargingEfficiency));
  if (spread === null || cylinders.length === 1) return '';
  const delivered = spreadOf(cylinders.map((cylinder) => cylinder.deliveryRatio));
  return (
    `Kept spreads over ${shareText(spread.range)} of its mean (standard deviation ${shareText(spread.deviation / spread.mean)})` +
    (delivered ? `, delivered over ${shareText(delivered.range)}.` : '.')
  );
}
