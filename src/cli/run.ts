import { toDesignPath } from '../design/geometry-faults.ts';
import { remarks } from '../design/remarks.ts';
import type { Design } from '../design/schema/design.ts';
import { toEngine } from '../design/to-engine.ts';
import { buildModel, solvePoint } from '../sim/index.ts';
import type { Model } from '../sim/index.ts';
import { rpm } from '../sim/units.ts';
import { readArguments } from './arguments.ts';
import type { Request } from './arguments.ts';
import { HELP } from './help.ts';
import { loadDesign } from './load-design.ts';
import { geometryJson, pointJson } from './point-json.ts';
import { geometryReport, pointReport, sweepReport } from './reports.ts';
import { BAD_INPUT, NO_ANSWER, SOLVED, tell } from './streams.ts';
import type { Streams } from './streams.ts';
import { sweepCsv } from './sweep-csv.ts';

/** Run the command line with a solver of points; returns the exit code. */
export function run(argv: readonly string[], streams: Streams, solver: Solver = solvePoint): number {
  const request = readArguments(argv);
  if (!request.ok) {
    tell(request.faults, streams);
    streams.err('umbel --help tells more.\n');
    return BAD_INPUT;
  }
  if (request.value === 'help') {
    streams.out(HELP);
    return SOLVED;
  }
  const design = loadDesign(request.value.file, request.value.changes);
  if (!design.ok) return tell(design.faults, streams);
  const model = buildModel(toEngine(design.value));
  if (!model.ok)
    return tell(
      model.faults.map((fault) => toDesignPath(fault, design.value)),
      streams,
    );
  return COMMANDS[request.value.command](request.value, design.value, model.value, streams, solver);
}

type Solver = typeof solvePoint;
type Run = (request: Request, design: Design, model: Model, streams: Streams, solver: Solver) => number;

const COMMANDS: Record<Request['command'], Run> = { point, sweep, geometry, check };

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

function point(
  request: Request,
  { name }: Design,
  model: Model,
  { out, err }: Streams,
  solver: Solver,
): number {
  const result = solver(model, { speed: request.speeds[0]!, throttle: request.throttle });
  out(request.format === 'json' ? json(pointJson(name, model, result)) : pointReport(name, model, result));
  if (result.converged) return SOLVED;
  err(`no answer at ${Math.round(result.speed / rpm)} rpm: ${result.reason}\n`);
  return NO_ANSWER;
}

function sweep(
  request: Request,
  { name }: Design,
  model: Model,
  { out, err }: Streams,
  solver: Solver,
): number {
  const { throttle, format } = request;
  const points = request.speeds.map((speed) => solver(model, { speed, throttle }));
  if (format === 'json') {
    out(json({ design: name, points: points.map((each) => pointJson(name, model, each)) }));
  } else if (format === 'csv') {
    out(sweepCsv(name, model, points));
  } else {
    const { crankingSpeed } = model.engine.wanted;
    const included = points.some((each) => Math.abs(each.speed - crankingSpeed) <= 1e-6 * crankingSpeed);
    const cranking = included ? null : solver(model, { speed: crankingSpeed, throttle });
    out(sweepReport(name, model, points, cranking));
  }
  const unsolved = points.filter((each) => !each.converged);
  for (const each of unsolved) err(`no answer at ${Math.round(each.speed / rpm)} rpm: ${each.reason}\n`);
  return unsolved.length === 0 ? SOLVED : NO_ANSWER;
}

function geometry(request: Request, { name }: Design, model: Model, { out }: Streams): number {
  out(request.format === 'json' ? json(geometryJson(name, model)) : geometryReport(name, model));
  return SOLVED;
}

function check(_: Request, design: Design, model: Model, { out }: Streams): number {
  const unusual = remarks(design);
  const count = model.geometry.cylinders.length;
  out(
    `${design.name}: nothing is wrong with the file; ${count} ${count === 1 ? 'cylinder' : 'cylinders'}.\n`,
  );
  for (const { path, message } of unusual) out(`unusual: ${path}: ${message}\n`);
  return SOLVED;
}
