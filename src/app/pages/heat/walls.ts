import type { TableColumn, TableFoot } from '../../../charts/chart-types.ts';
import { figure } from '../../../charts/format.ts';
import type { SolvedPoint, WallFigures } from '../../../sim/index.ts';
import type { Phrase } from '../../headline.ts';
import type { ShownUnits } from '../../units/shown-units.ts';
import { figured, plain } from '../words.ts';

/** Walls of all cylinders, or null where their temperatures are given. */
export function solvedWalls({ cylinders }: SolvedPoint): readonly WallFigures[] | null {
  const found = cylinders.flatMap(({ walls }) => (walls ? [walls] : []));
  return found.length === cylinders.length && found.length > 0 ? found : null;
}

export const hottestOf = (walls: readonly WallFigures[]): number =>
  walls.reduce((hottest, { crown }, j) => (crown > walls[hottest]!.crown ? j : hottest), 0);

/** Which crown runs hottest, and why: its air if that is warmer or slower than the average's, else its fire. */
export function crownSentence(
  walls: readonly WallFigures[],
  labels: readonly string[],
  limit: number,
  units: ShownUnits,
): Phrase[] {
  const hot = hottestOf(walls);
  const { crown, airSpeed, fromGas } = walls[hot]!;
  const temperature = figured(units.text('temperature', crown));
  const against: Phrase =
    crown > limit
      ? { text: `, above the ${units.text('temperature', limit)} set for it`, tone: 'short' }
      : plain(`; ${units.text('temperature', limit)} are set for it`);
  if (walls.length === 1) return [plain('The crown comes to '), temperature, against, plain('.')];
  const mean = (of: (each: WallFigures) => number) =>
    walls.reduce((sum, each) => sum + of(each), 0) / walls.length;
  const behind = airSpeed < Math.max(...walls.map((each) => each.airSpeed)) * (1 - 1e-9);
  const meanHeat = mean((each) => each.fromGas.crown);
  const more = fromGas.crown / meanHeat - 1;
  const why = behind
    ? 'it stands in the wake of the row before it'
    : more > 5e-3
      ? `its gas gives it ${figure(100 * more, 2)}\u202f% more heat than the average crown gets`
      : 'but all are much alike';
  return [
    plain('The crown of '),
    figured(labels[hot]!),
    plain(' runs hottest, '),
    temperature,
    against,
    plain(`: ${why}.`),
  ];
}

/** Where the heat of each cylinder's walls goes [reader's unit]. */
export function pathsTable(
  walls: readonly WallFigures[],
  labels: readonly string[],
  units: ShownUnits,
): { columns: TableColumn[]; foot: TableFoot[] } {
  const heat = (label: string, of: (each: WallFigures) => number, term: string) => ({
    heading: units.heading(label, 'heat'),
    values: units.column('heat', walls.map(of)),
    digits: 3,
    term,
  });
  const temperature = (label: string, of: (each: WallFigures) => number, term: string) => ({
    heading: units.heading(label, 'temperature'),
    values: units.column('temperature', walls.map(of)),
    digits: 3,
    term,
  });
  const paths = [
    heat('head to air', (each) => each.headToAir, 'walls.headToAir'),
    heat('barrel to air', (each) => each.barrelToAir, 'walls.headToAir'),
    heat('into the crankcase', (each) => each.crownToCase + each.bodyToCase, 'walls.crownToCase'),
    heat('on its way: rings and skirt', (each) => each.throughRings, 'walls.throughRings'),
    heat('on its way: joint', (each) => each.throughJoint, 'walls.throughRings'),
  ];
  const sums = paths.map(({ values }) =>
    figure(
      Array.from(values).reduce((sum, value) => sum + value, 0),
      4,
    ),
  );
  return {
    columns: [
      { heading: 'cylinder', values: labels },
      temperature('crown', (each) => each.crown, 'walls.crown'),
      temperature('head', (each) => each.head, 'walls.crown'),
      temperature('liner', (each) => each.liner, 'walls.crown'),
      ...paths,
      temperature('air that meets it', (each) => each.airTemperature, 'walls.headToAir'),
    ],
    foot: walls.length > 1 ? [{ label: 'all', cells: ['', '', '', ...sums, ''] }] : [],
  };
}
