import { PLAIN } from '../../design/unit-table.ts';
import { parseQuantity } from '../../design/parse-quantity.ts';
import type { Model } from '../../sim/index.ts';
import { failure, success } from '../../sim/outcome.ts';
import type { Outcome } from '../../sim/outcome.ts';
import { airStudy } from '../../sim/study/air/air-study.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import { rpm } from '../../sim/units.ts';
import { readSpeeds, readThrottle } from '../arguments.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { airJson } from './air-json.ts';
import { airReport } from './air-report.ts';
import { readStudyArguments } from './study-arguments.ts';

/** Speeds that are looked at where none are typed, cranking apart. */
const SPEEDS = 7;

/** `air FILE [--speed A:B:STEP] [--throttle 80%] [--humidity 60%] [--json]`: the sentence and the table. */
export function runAir(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    speed: { type: 'string' },
    throttle: { type: 'string' },
    humidity: { type: 'string' },
    json: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const text = (option: string) => values[option] as string | undefined;
  const speeds =
    text('speed') === undefined ? success(usualSpeeds(model)) : readSpeeds('range', text('speed'));
  const throttle = readThrottle(text('throttle'));
  const humidity = readHumidity(text('humidity'), model.engine.ambient.humidity);
  const faults = [speeds, throttle, humidity].flatMap((each) => (each.ok ? [] : each.faults));
  if (!speeds.ok || !throttle.ok || !humidity.ok) return tell(faults, streams);
  const study = finishStudy(airStudy(model, withCranking(speeds.value, model), throttle.value));
  streams.out(
    values['json']
      ? `${JSON.stringify(airJson(design.name, model, study, humidity.value), null, 2)}\n`
      : airReport(design, model, study, humidity.value),
  );
  const unsolved = study.lines.filter(({ point }) => !point.converged);
  for (const { point } of unsolved)
    if (!point.converged) streams.err(`no answer at ${Math.round(point.speed / rpm)} rpm: ${point.reason}\n`);
  return unsolved.length === 0 ? SOLVED : NO_ANSWER;
}

/** Evenly from the lowest to the highest working speed [rad/s]. */
function usualSpeeds({ engine }: Model): readonly number[] {
  const { minSpeed, maxSpeed } = engine.wanted;
  if (maxSpeed <= minSpeed) return [minSpeed];
  return Array.from({ length: SPEEDS }, (_, i) => minSpeed + ((maxSpeed - minSpeed) * i) / (SPEEDS - 1));
}

function withCranking(speeds: readonly number[], { engine }: Model): readonly number[] {
  const { crankingSpeed } = engine.wanted;
  const there = speeds.some((speed) => Math.abs(speed - crankingSpeed) <= 1e-6 * crankingSpeed);
  return there ? speeds : [crankingSpeed, ...speeds].sort((a, b) => a - b);
}

/** @returns the design's own where nothing is typed */
function readHumidity(text: string | undefined, own: number): Outcome<number> {
  if (text === undefined) return success(own);
  const read = parseQuantity(text, PLAIN);
  if (!read.ok) return failure(read.faults.map(({ message }) => ({ path: '--humidity', message })));
  const { value } = read.value;
  if (value >= 0 && value <= 1) return success(value);
  return failure([{ path: '--humidity', message: `is ${value}; allowed 0 to 1, or 0% to 100%` }]);
}
