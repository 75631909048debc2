import { UNIT_OF_SUFFIX } from '../../design/unit-table.ts';
import { airNeeded } from '../../sim/study/walls/air-needed.ts';
import type { AirNeeded, WallPart } from '../../sim/study/walls/air-needed.ts';
import { coatingEffect } from '../../sim/study/walls/coating-effect.ts';
import type { CoatingEffect } from '../../sim/study/walls/coating-effect.ts';
import { coolingChanged, solvedWith } from '../../sim/study/walls/solved-with.ts';
import { success } from '../../sim/outcome.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import { rpm } from '../../sim/units.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { readTyped } from './read-typed.ts';
import { faultsOf, POINT_OPTIONS, readPoint, readStudyArguments } from './study-arguments.ts';
import { wallsJson, wallsReport } from './walls-report.ts';

const PARTS: readonly WallPart[] = ['crown', 'head', 'liner'];

/**
 * `walls FILE [--speed 6000] [--crown 280C | --head 200C | --liner 180C] [--coating] [--throttle 80%] [--json]`: what the walls come to, where
 * their heat goes, and how they warm and cool.
 */
export function runWalls(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    ...POINT_OPTIONS,
    crown: { type: 'string' },
    head: { type: 'string' },
    liner: { type: 'string' },
    coating: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const at = readPoint(values, model.engine.wanted.speed);
  const limits = PARTS.map((part) =>
    readTyped(`--${part}`, values[part] as string | undefined, UNIT_OF_SUFFIX.C, null),
  );
  const faults = faultsOf(at, ...limits);
  const asked = PARTS.flatMap((part, i) => {
    const limit = limits[i]!;
    return limit.ok && limit.value !== null ? [{ part, limit: limit.value }] : [];
  });
  if (asked.length > 1)
    faults.push({ path: `--${asked[1]!.part}`, message: 'give one limit, of crown, head or liner' });
  for (const { part, limit } of asked) {
    if (limit <= model.engine.ambient.temperature)
      faults.push({ path: `--${part}`, message: 'is no warmer than the air; allowed above it' });
  }
  if (faults.length > 0 || !at.ok) return tell(faults, streams);
  const point = at.value;
  const refuse = (message: string): number => {
    streams.err(`no answer at ${Math.round(point.speed / rpm)} rpm: ${message}\n`);
    return NO_ANSWER;
  };
  const solved = finishStudy(solvedWith('walls', coolingChanged(model.engine, {}), point, null));
  if (!solved.ok) return refuse(solved.faults[0]!.message);
  const [first] = asked;
  const air = first
    ? finishStudy(airNeeded(model, point, first.part, first.limit))
    : success<AirNeeded | null>(null);
  if (!air.ok) return refuse(air.faults[0]!.message);
  const coating = values['coating']
    ? finishStudy(coatingEffect(model, point))
    : success<CoatingEffect | null>(null);
  if (!coating.ok) return refuse(coating.faults[0]!.message);
  const found = { point: solved.value.point, air: air.value, coating: coating.value };
  streams.out(
    values['json']
      ? `${JSON.stringify(wallsJson(design.name, model, found), null, 2)}\n`
      : wallsReport(design.name, model, found),
  );
  return SOLVED;
}
