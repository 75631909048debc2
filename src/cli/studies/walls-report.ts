import { cylinderName } from '../../design/cylinder-name.ts';
import type { Model, SolvedPoint, WallFigures } from '../../sim/index.ts';
import type { AirNeeded } from '../../sim/study/walls/air-needed.ts';
import { LEAST_AIR, MOST_AIR } from '../../sim/study/walls/air-needed.ts';
import type { CoatingEffect } from '../../sim/study/walls/coating-effect.ts';
import type { WarmUp } from '../../sim/study/walls/warm-up.ts';
import { warmUp } from '../../sim/study/walls/warm-up.ts';
import { celsiusFromKelvin, kW, minute, mm, rpm } from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';
import { table } from '../table.ts';

export interface FoundWalls {
  /** Solved with wall temperatures worked out. */
  readonly point: SolvedPoint;
  readonly air: AirNeeded | null;
  readonly coating: CoatingEffect | null;
}

const fixed = (value: number, digits: number): string => value.toFixed(digits).replace('-', '−');
const celsius = (value: number): string => fixed(celsiusFromKelvin(value), 0);

const wallsOf = ({ cylinders }: SolvedPoint): readonly WallFigures[] =>
  cylinders.flatMap(({ walls }) => (walls ? [walls] : []));
const hottestOf = (walls: readonly WallFigures[]): number =>
  walls.reduce((hottest, { crown }, j) => (crown > walls[hottest]!.crown ? j : hottest), 0);
const nameOf = ({ geometry }: Model, j: number): string =>
  cylinderName(geometry.cylinders[j]!.rowIndex, geometry.cylinders[j]!.cylinderIndex);

export function wallsReport(design: string, model: Model, { point, air, coating }: FoundWalls): string {
  const walls = wallsOf(point);
  const hot = hottestOf(walls);
  const { crown: limit } = model.engine.cylinderHeat.cooling.limits;
  const { crown } = walls[hot]!;
  const stands = crown > limit ? 'above' : 'below';
  return [
    `The crown of ${nameOf(model, hot)} runs hottest, at ${celsius(crown)} °C on the mean: ${fixed(Math.abs(crown - limit), 0)} K ${stands} the ${celsius(limit)} °C set for it.`,
    '',
    `${design}, ${fixed(point.speed / rpm, 0)} rpm, wall temperatures worked out; °C, and heat in W`,
    wallTable(model, walls),
    '',
    ...(air ? [airLine(air), ''] : []),
    ...(coating ? [...coatingLines(coating), ''] : []),
    ...warmUpLines(nameOf(model, hot), warmUp(model.engine, walls[hot]!)),
    '',
    'Means of each part: the middle of a crown, the land above the exhaust window and the plug’s boss are hotter, by tens of degrees. Contact of rings',
    'and joint, and the air between fins, are uncertain twofold: measure before you trust.',
    CAUTION,
    '',
  ].join('\n');
}

const wallTable = (model: Model, walls: readonly WallFigures[]): string =>
  table(
    [
      'cylinder',
      'crown',
      'head',
      'liner',
      'fin root',
      'head to air',
      'barrel to air',
      'to crankcase',
      'by rings',
      'by joint',
      'air °C',
      'm/s',
    ],
    walls.map((each, j) => [
      nameOf(model, j),
      celsius(each.crown),
      celsius(each.head),
      celsius(each.liner),
      celsius(each.finRoot),
      fixed(each.headToAir, 0),
      fixed(each.barrelToAir, 0),
      fixed(each.crownToCase + each.bodyToCase, 0),
      fixed(each.throughRings, 0),
      fixed(each.throughJoint, 0),
      celsius(each.airTemperature),
      fixed(each.airSpeed, 1),
    ]),
  );

function airLine({ part, limit, airSpeed, atLeast, atMost }: AirNeeded): string {
  const ends = `the hottest comes to ${celsius(atLeast)} °C at ${LEAST_AIR} m/s and ${celsius(atMost)} °C at ${MOST_AIR} m/s`;
  if (airSpeed === null)
    return `No air speed up to ${MOST_AIR} m/s holds every ${part} to ${celsius(limit)} °C; ${ends}.`;
  return airSpeed <= LEAST_AIR
    ? `Every ${part} stays below ${celsius(limit)} °C at ${LEAST_AIR} m/s of air already; ${ends}.`
    : `To hold every ${part} to ${celsius(limit)} °C takes ${fixed(airSpeed, 1)} m/s of air before the front row; ${ends}.`;
}

function coatingLines({ thickness, without, coated }: CoatingEffect): string[] {
  return [
    `a ceramic layer of ${fixed(thickness / mm, 2)} mm on the crowns, without and with:`,
    `  hottest crown, metal ${celsius(without.crown)} and ${celsius(coated.crown)} °C; its face ${celsius(without.crownSurface)} and ${celsius(coated.crownSurface)} °C`,
    `  heat into all crowns ${fixed(without.crownHeat, 0)} and ${fixed(coated.crownHeat, 0)} W; power ${fixed(without.brakePower / kW, 3)} and ${fixed(coated.brakePower / kW, 3)} kW; exhaust ${celsius(without.exhaustTemperature)} and ${celsius(coated.exhaustTemperature)} °C`,
    '  a hot face warms the charge and may bring knock nearer; thick layers crack off',
  ];
}

function warmUpLines(name: string, { warmingTime, standingTime, warming, linerPeak }: WarmUp): string[] {
  const reached = warming.crown.findIndex(
    (crown) => crown - warming.crown[0]! > 0.9 * (warming.crown.at(-1)! - warming.crown[0]!),
  );
  const span = (seconds: number) =>
    seconds < 2 * minute ? `${fixed(seconds, 0)} s` : `${fixed(seconds / minute, 1)} min`;
  return [
    `${name} from cold at this speed: nine tenths of the crown’s rise after ${span(warming.time[reached]!)}; slowest time constant ${span(warmingTime)}`,
    `  stopped from there in still air: the liner comes to ${celsius(linerPeak.temperature)} °C after ${span(linerPeak.time)}; slowest time constant ${span(standingTime)}`,
  ];
}

export function wallsJson(design: string, model: Model, { point, air, coating }: FoundWalls) {
  const walls = wallsOf(point);
  const hot = hottestOf(walls);
  const course = warmUp(model.engine, walls[hot]!);
  return {
    design,
    speed_rpm: Number((point.speed / rpm).toPrecision(12)),
    throttle: point.throttle,
    cylinders: walls.map((each, j) => ({
      cylinder: nameOf(model, j),
      crownSurface_K: each.crownSurface,
      crown_K: each.crown,
      body_K: each.body,
      head_K: each.head,
      liner_K: each.liner,
      finRoot_K: each.finRoot,
      headToAir_W: each.headToAir,
      barrelToAir_W: each.barrelToAir,
      crownToCrankcase_W: each.crownToCase,
      bodyToCrankcase_W: each.bodyToCase,
      throughRings_W: each.throughRings,
      throughJoint_W: each.throughJoint,
      airSpeed_m_per_s: each.airSpeed,
      airTemperature_K: each.airTemperature,
    })),
    airNeeded: air && {
      part: air.part,
      limit_K: air.limit,
      airSpeed_m_per_s: air.airSpeed,
      atLeastSpeed_K: air.atLeast,
      atMostSpeed_K: air.atMost,
    },
    coating: coating && {
      thickness_m: coating.thickness,
      without: coatingJson(coating.without),
      coated: coatingJson(coating.coated),
    },
    course: {
      cylinder: nameOf(model, hot),
      warmingTimeConstant_s: course.warmingTime,
      standingTimeConstant_s: course.standingTime,
      linerPeak_K: course.linerPeak.temperature,
      linerPeakAfter_s: course.linerPeak.time,
      warming: courseJson(course.warming),
      standing: courseJson(course.standing),
    },
  };
}

const coatingJson = (each: CoatingEffect['coated']) => ({
  crown_K: each.crown,
  crownSurface_K: each.crownSurface,
  crownHeat_W: each.crownHeat,
  brakePower_W: each.brakePower,
  exhaustTemperature_K: each.exhaustTemperature,
});

const courseJson = ({ time, crown, head, liner }: WarmUp['warming']) => ({
  time_s: time,
  crown_K: crown,
  head_K: head,
  liner_K: liner,
});
