import { solvePoint } from '../../sim/index.ts';
import { pulses } from '../../sim/study/pulses/pulses.ts';
import { rpm } from '../../sim/units.ts';
import { readSpeeds, readThrottle } from '../arguments.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { pulsesJson } from './pulses-json.ts';
import { pulsesReport } from './pulses-report.ts';
import { readStudyArguments } from './study-arguments.ts';

/** `pulses FILE --speed 6000 [--throttle 80%] [--json]`: when every cylinder fires, how hard, and what has to bear it. */
export function runPulses(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    speed: { type: 'string' },
    throttle: { type: 'string' },
    json: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const speeds = readSpeeds('one', values['speed'] as string | undefined);
  const throttle = readThrottle(values['throttle'] as string | undefined);
  const faults = [speeds, throttle].flatMap((each) => (each.ok ? [] : each.faults));
  if (!speeds.ok || !throttle.ok) return tell(faults, streams);
  const point = solvePoint(model, { speed: speeds.value[0]!, throttle: throttle.value });
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
