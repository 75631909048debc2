import { solvePoint } from '../../sim/index.ts';
import { pulses } from '../../sim/study/pulses/pulses.ts';
import { rpm } from '../../sim/units.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { pulsesJson } from './pulses-json.ts';
import { pulsesReport } from './pulses-report.ts';
import { POINT_OPTIONS, readPoint, readStudyArguments } from './study-arguments.ts';

/** `pulses FILE --speed 6000 [--throttle 80%] [--json]`: when every cylinder fires, how hard, and what has to bear it. */
export function runPulses(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, POINT_OPTIONS);
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const asked = readPoint(values);
  if (!asked.ok) return tell(asked.faults, streams);
  const point = solvePoint(model, asked.value);
  if (!point.converged) {
    streams.err(`no answer at ${Math.round(point.speed / rpm)} rpm: ${point.reason}\n`);
    return NO_ANSWER;
  }
  const found = pulses(model, point);
  streams.out(
    values['json']
      ? `${JSON.stringify(pulsesJson(design.name, model, point, found), null, 2)}\n`
      : pulsesReport(design.name, model, point, found),
  );
  return SOLVED;
}
