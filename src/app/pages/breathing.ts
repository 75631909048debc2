import type { TableColumn, TableFoot } from '../../charts/chart-types.ts';
import { figure } from '../../charts/format.ts';
import type { SolvedPoint } from '../../sim/index.ts';
import { bar, deg } from '../../sim/units.ts';
import type { Phrase } from '../headline.ts';
import { samplesOfFirstTurn } from '../turn-columns.ts';
import type { ShownUnits } from '../units/shown-units.ts';
import { cylinderSpread } from './cylinder-spread.ts';
import { figured, plain, shareText } from './words.ts';

/** One cylinder over the first turn of the period, in base SI but for angle and purity. */
export interface BreathingColumns {
  readonly angle_deg: Float64Array;
  readonly exhaustArea: Float64Array;
  readonly transferArea: Float64Array;
  readonly cylinder: Float64Array;
  readonly passage: Float64Array;
  readonly collector: Float64Array;
  /** Into the cylinder, and out of it to the collector; negative where it flows back. */
  readonly transferFlow: Float64Array;
  readonly exhaustFlow: Float64Array;
  readonly purity_percent: Float64Array;
  readonly volume: Float64Array;
}

export function breathingColumns(
  { traces }: SolvedPoint,
  index: number,
  collectorIndex: number,
): BreathingColumns {
  const count = samplesOfFirstTurn(traces.angle);
  const part = (column: Float64Array): Float64Array => column.subarray(0, count);
  const cylinder = traces.cylinders[index]!;
  return {
    angle_deg: part(traces.angle).map((angle) => angle / deg),
    exhaustArea: part(cylinder.exhaustArea),
    transferArea: part(cylinder.transferArea),
    cylinder: part(cylinder.pressure),
    passage: part(traces.passages[index]!.pressure),
    collector: part(traces.collectors[collectorIndex]!.pressure),
    transferFlow: part(cylinder.transferFlow),
    exhaustFlow: part(cylinder.exhaustFlow),
    purity_percent: part(cylinder.purity).map((purity) => 100 * purity),
    volume: part(cylinder.volume),
  };
}

/** The stretch of pressure in which the windows work [Pa]; the rest of the cylinder's line leaves the chart at the top. */
export function windowPressures({
  passage,
  collector,
}: Pick<BreathingColumns, 'passage' | 'collector'>): [number, number] {
  const low = Math.min(...passage, ...collector);
  const high = Math.max(...passage, ...collector);
  return [low - 0.35 * (high - low) - 0.02 * bar, high + 0.9 * (high - low) + 0.04 * bar];
}

/** Figures cylinder by cylinder, and under them how far they spread. */
export function cylinderTable(
  { cylinders }: SolvedPoint,
  labels: readonly string[],
  units: ShownUnits,
): { columns: TableColumn[]; foot: TableFoot[] } {
  const pick = (of: (cylinder: SolvedPoint['cylinders'][number]) => number): number[] => cylinders.map(of);
  const figures: { heading: string; values: number[]; digits: number; term: string }[] = [
    { heading: 'delivered, × swept', values: pick((c) => c.deliveryRatio), digits: 3, term: 'deliveryRatio' },
    {
      heading: 'kept, × swept',
      values: pick((c) => c.chargingEfficiency),
      digits: 3,
      term: 'chargingEfficiency',
    },
    {
      heading: 'kept of delivered, %',
      values: pick((c) => 100 * c.trappingEfficiency),
      digits: 3,
      term: 'trappingEfficiency',
    },
    { heading: 'purity, %', values: pick((c) => 100 * c.purity), digits: 3, term: 'purity' },
    {
      heading: units.heading('imep', 'pressure'),
      values: pick((c) => units.number('pressure', c.imep)),
      digits: 3,
      term: 'imep',
    },
    {
      heading: units.heading('peak', 'pressure'),
      values: pick((c) => units.number('pressure', c.peakPressure)),
      digits: 3,
      term: 'peakPressure',
    },
    {
      heading: 'peak after own TDC, °',
      values: pick((c) => c.peakPressureAngle / deg),
      digits: 3,
      term: 'peakPressureAngle',
    },
    {
      heading: units.heading('exhaust', 'temperature'),
      values: pick((c) => units.number('temperature', c.exhaustTemperature)),
      digits: 3,
      term: 'exhaustTemperature',
    },
  ];
  const spreads = figures.map(({ values }) => cylinderSpread(values));
  const several = cylinders.length > 1;
  // A range over a mean says nothing of angles and degrees of temperature, whose zero is a convention.
  const relative = (i: number): boolean => i < 6;
  return {
    columns: [
      { heading: 'cylinder', values: labels },
      ...figures,
      { heading: 'misfire', values: cylinders.map((c) => (c.misfire ? 'expected' : 'no')), term: 'misfire' },
    ],
    foot: several
      ? [
          { label: 'mean', cells: [...spreads.map((s) => figure(s?.mean ?? null, 3)), ''] },
          {
            label: 'range / mean',
            cells: [...spreads.map((s, i) => (s && relative(i) ? shareText(s.relativeRange) : '')), ''],
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
  const spread = cylinderSpread(cylinders.map((cylinder) => cylinder.chargingEfficiency));
  if (spread === null) return [];
  const { mostIndex, leastIndex, most, least, relativeRange } = spread;
  if (cylinders.length === 1) {
    const [{ deliveryRatio }] = cylinders as [SolvedPoint['cylinders'][number]];
    return [
      plain('The one cylinder keeps '),
      figured(`${figure(most, 2)} of its swept volume`),
      plain(`, of ${figure(deliveryRatio, 3)} delivered.`),
    ];
  }
  if (relativeRange < 5e-4) {
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
  const spread = cylinderSpread(cylinders.map((cylinder) => cylinder.chargingEfficiency));
  if (spread === null || cylinders.length === 1) return '';
  const delivered = cylinderSpread(cylinders.map((cylinder) => cylinder.deliveryRatio));
  return (
    `Kept spreads over ${shareText(spread.relativeRange)} of its mean (standard deviation ${shareText(spread.deviation / spread.mean)})` +
    (delivered ? `, delivered over ${shareText(delivered.relativeRange)}.` : '.')
  );
}
