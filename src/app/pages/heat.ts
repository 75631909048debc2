import type { TableColumn, TableFoot } from '../../charts/chart-types.ts';
import { figure } from '../../charts/format.ts';
import type { Engine, SolvedPoint } from '../../sim/index.ts';
import type { Phrase } from '../headline.ts';
import type { ShownUnits } from '../units/shown-units.ts';
import { cylinderSpread } from './cylinder-spread.ts';
import { figured, plain, shareText } from './words.ts';

/** Heat into the walls of each cylinder [W]. */
export interface HeatColumns {
  readonly crown: readonly number[];
  readonly head: readonly number[];
  readonly liner: readonly number[];
  readonly whole: readonly number[];
  /** [K] */
  readonly exhaust: readonly number[];
  /** What leaves before the transfer opens; NaN where nothing does [K]. */
  readonly blowdown: readonly number[];
}

export function heatColumns({ cylinders }: SolvedPoint): HeatColumns {
  return {
    crown: cylinders.map(({ wallHeat }) => wallHeat.crown),
    head: cylinders.map(({ wallHeat }) => wallHeat.head),
    liner: cylinders.map(({ wallHeat }) => wallHeat.liner),
    whole: cylinders.map(({ wallHeat }) => wallHeat.crown + wallHeat.head + wallHeat.liner),
    exhaust: cylinders.map(({ exhaustTemperature }) => exhaustTemperature),
    blowdown: cylinders.map(({ exhaustGas }) => exhaustGas.blowdown ?? NaN),
  };
}

/** Which cylinder's walls take most heat, and how far above the average. */
export function heatSentence(point: SolvedPoint, labels: readonly string[], units: ShownUnits): Phrase[] {
  const { whole } = heatColumns(point);
  const spread = cylinderSpread(whole);
  if (spread === null) return [];
  if (whole.length === 1) {
    return [
      plain('The cylinder gives its walls '),
      figured(units.text('heat', spread.most)),
      plain(' of heat.'),
    ];
  }
  const above = spread.mean > 0 ? spread.most / spread.mean - 1 : NaN;
  if (above < 5e-4) {
    return [
      plain('Every cylinder gives its walls the same heat, '),
      figured(units.text('heat', spread.most)),
      plain('.'),
    ];
  }
  const margin = Number.isFinite(above) ? `, ${shareText(above)} above the average cylinder` : '';
  return [
    figured(`Cylinder ${labels[spread.mostIndex]}`),
    plain(' works its walls hardest: '),
    figured(units.text('heat', spread.most)),
    plain(`${margin}.`),
  ];
}

/** All the walls take, against the fuel; and that their temperatures are not an answer. */
export function heatDetail(
  { engine }: SolvedPoint,
  { cylinderHeat }: Pick<Engine, 'cylinderHeat'>,
  units: ShownUnits,
): string {
  const ofFuel =
    engine.balance.fuel > 0
      ? `, ${shareText(engine.wallHeat / engine.balance.fuel)} of the energy in the fuel`
      : '';
  const { crownTemperature, headTemperature, linerTemperature } = cylinderHeat;
  const all = `All cylinder walls together take ${units.text('heat', engine.wallHeat)}${ofFuel}. `;
  if (cylinderHeat.solvesWalls)
    return `${all}Their temperatures are worked out from what rings, joint and fins lead away: means over each part.`;
  const degrees = (temperature: number): string => units.text('temperature', temperature);
  return (
    all +
    `The temperatures of the walls are given here, not worked out: crowns ${degrees(crownTemperature)}, heads ${degrees(headTemperature)}, liners ${degrees(linerTemperature)}.`
  );
}

export function heatTable(
  point: SolvedPoint,
  labels: readonly string[],
  units: ShownUnits,
): { columns: TableColumn[]; foot: TableFoot[] } {
  const { crown, head, liner, whole, exhaust, blowdown } = heatColumns(point);
  const heat = (label: string, values: readonly number[]) => ({
    heading: units.heading(label, 'heat'),
    values: units.column('heat', values),
    digits: 3,
    term: 'wallHeat',
  });
  const columns: TableColumn[] = [
    { heading: 'cylinder', values: labels },
    heat('crown', crown),
    heat('head', head),
    heat('liner', liner),
    heat('all walls', whole),
    {
      heading: units.heading('exhaust gas', 'temperature'),
      values: units.column('temperature', exhaust),
      digits: 3,
      term: 'exhaustTemperature',
    },
    {
      heading: units.heading('of it, blowdown', 'temperature'),
      values: units.column('temperature', blowdown),
      digits: 3,
      term: 'exhaustGas.blowdown',
    },
  ];
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const sums = [crown, head, liner, whole].map((values) => figure(units.number('heat', sum(values)), 4));
  return { columns, foot: labels.length > 1 ? [{ label: 'all', cells: [...sums, '', ''] }] : [] };
}
