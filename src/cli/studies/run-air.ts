import type { Model } from '../../sim/index.ts';
import { success } from '../../sim/outcome.ts';
import { airStudy } from '../../sim/study/air/air-study.ts';
import { otherFeed, withFeed } from '../../sim/study/air/fuel-feed.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import { rpm } from '../../sim/units.ts';
import { readSpeeds, readThrottle } from '../arguments.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { airJson } from './air-json.ts';
import { airReport, nearest } from './air-report.ts';
import { readStudyArguments } from './study-arguments.ts';

/** Speeds that are looked at where none are typed, cranking apart. */
const SPEEDS = 7;

/** `air FILE [--speed A:B:STEP] [--throttle 80%] [--json]`: the sentence and the table. */
export function runAir(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    speed: { type: 'string' },
    throttle: { type: 'string' },
    json: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const text = (option: string) => values[option] as string | undefined;
  const speeds =
    text('speed') === undefined ? success(usualSpeeds(model)) : readSpeeds('range', text('speed'));
  const throttle = readThrottle(text('throttle'));
  const faults = [speeds, throttle].flatMap((each) => (each.ok ? [] : each.faults));
  if (!speeds.ok || !throttle.ok) return tell(faults, streams);
  const study = finishStudy(airStudy(model, withCranking(speeds.value, model), throttle.value));
  const shown = nearest(study, model.engine.wanted.speed);
  const beside = shown && finishStudy(withFeed(model, shown, otherFeed(model.engine.charge.feed)));
  const told = { shown, beside: beside?.ok ? beside.value : null };
  streams.out(
    values['json']
      ? `${JSON.stringify(airJson(design.name, model, study, told), null, 2)}\n`
      : airReport(design, model, study, told),
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
