import { FitModel } from '../../sim/fit/fit-model.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { fitJson, fitReport } from './fit-report.ts';
import { readStudyArguments } from './study-arguments.ts';

/** `fit FILE [--json]`: whether it goes together; 1 if anything collides. */
export function runFit(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, { json: { type: 'boolean' } });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const { report } = new FitModel(model.engine, model.geometry);
  streams.out(
    values['json']
      ? `${JSON.stringify(fitJson(design.name, report), null, 2)}\n`
      : fitReport(design.name, report),
  );
  return report.checks.some(({ verdict }) => verdict === 'collides') ? NO_ANSWER : SOLVED;
}
