import type { TableColumn, TableFoot } from '../../charts/chart-types.ts';
import { figure } from '../../charts/format.ts';
import type { Engine, SolvedPoint } from '../../sim/index.ts';
import { celsiusFromKelvin } from '../../sim/units.ts';
import type { Phrase } from '../headline.ts';
import { spreadOf } from './spread.ts';
import { figured, plain, powerText, shareText } from './words.ts';

/** Heat into the walls of each cylinder [W]. */
export interface HeatColumns {
  readonly crown: readonly number[];
  readonly head: readonly number[];
  readonly liner: readonly number[];
  readonly whole: readonly number[];
  readonly exhaust_C: readonly number[];
}

export function heatColumns({ cylinders }: SolvedPoint): HeatColumns {
  return {
    crown: cylinders.map(({ wallHeat }) => wallHeat.crown),
    head: cylinders.map(({ wallHeat }) => wallHeat.head),
    liner: cylinders.map(({ wallHeat }) => wallHeat.liner),
    whole: cylinders.map(({ wallHeat }) => wallHeat.crown + wallHeat.head + wallHeat.liner),
    exhaust_C: cylinders.map(({ exhaustTemperature }) => celsiusFromKelvin(exhaustTemperature)),
  };
}

/** Which cylinder's walls take most heat, and how far above the average. */
export function heatSentence(point: SolvedPoint, labels: readonly string[]): Phrase[] {
  const { whole } = heatColumns(point);
  const spread = spreadOf(whole);
  if (spread === null) return [];
  if (whole.length === 1) {
    return [plain('The cylinder gives its walls '), figured(powerText(spread.most)), plain(' of heat.')];
  }
  const above = spread.mean > 0 ? spread.most / spread.mean - 1 : NaN;
  if (above < 5e-4) {
    return [
      plain('Every cylinder gives its walls the same heat, '),
      figured(powerText(spread.most)),
      plain('.'),
    ];
  }
  const margin = Number.isFinite(above) ? `, ${shareText(above)} above the average cylinder` : '';
  return [
    figured(`Cylinder ${labels[spread.mostIndex]}`),
    plain(' works its walls hardest: '),
    figured(powerText(spread.most)),
    plain(`${margin}.`),
  ];
}

/** All the walls take, against the fuel; and that their temperatures are not an answer. */
export function heatDetail({ engine }: SolvedPoint, { cylinderHeat }: Pick<Engine, 'cylinderHeat'>): string {
  const ofFuel =
    engine.balance.fuel > 0
      ? `, ${shareText(engine.wallHeat / engine.balance.fuel)} of the energy in the fuel`
      : '';
  const { crownTemperature, headTemperature, linerTemperature } = cylinderHeat;
  const celsius = (temperature: number): string => `${figure(celsiusFromKelvin(temperature), 3)} °C`;
  return (
    `All cylinder walls together take ${powerText(engine.wallHeat)}${ofFuel}. ` +
    `The temperatures of the walls are given here, not worked out: crowns ${celsius(crownTemperature)}, heads ${celsius(headTemperature)}, liners ${celsius(linerTemperature)}.`
  );
}

export function heatTable(
  point: SolvedPoint,
  labels: readonly string[],
): { columns: TableColumn[]; foot: TableFoot[] } {
  const { crown, head, liner, whole, exhaust_C } = heatColumns(point);
  const watts = (heading: string, values: readonly number[]) => ({
    heading: `${heading}, W`,
    values,
    digits: 3,
  });
  const columns: TableColumn[] = [
    { heading: 'cylinder', values: labels },
    watts('crown', crown),
    watts('head', head),
    watts('liner', liner),
    watts('all walls', whole),
    { heading: 'exhaust gas, °C', values: exhaust_C, digits: 3 },
  ];
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const sums = [crown, head, liner, whole].map((values) => figure(sum(values), 4));
  return { columns, foot: labels.length > 1 ? [{ label: 'all', cells: [...sums, ''] }] : [] };
}
