import { parseQuantity } from '../../design/parse-quantity.ts';
import { PLAIN, UNIT_OF_SUFFIX } from '../../design/unit-table.ts';
import type { Model } from '../../sim/index.ts';
import { failure, success } from '../../sim/outcome.ts';
import type { Fault, Outcome } from '../../sim/outcome.ts';
import { KNOBS } from '../../sim/study/match/knobs.ts';
import type { KnobName } from '../../sim/study/match/knobs.ts';
import { matchRange } from '../../sim/study/match/match-range.ts';
import { match } from '../../sim/study/match/match.ts';
import { TARGETS } from '../../sim/study/match/target.ts';
import type { Target } from '../../sim/study/match/target.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import { rpm } from '../../sim/units.ts';
import { readSpeeds, readThrottle } from '../arguments.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { matchJson, rangeJson } from './match-json.ts';
import { matchReport, rangeReport } from './match-report.ts';
import { readStudyArguments } from './study-arguments.ts';

/**
 * `match FILE --target deliveryRatio=1.2 --speed 6000 [--vary PATH …] [--throttle 80%] [--json]`: what would close the gap;
 * with `--speed 1000:9000:1000` at every speed of the range.
 */
export function runMatch(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    target: { type: 'string' },
    speed: { type: 'string' },
    vary: { type: 'string', multiple: true },
    throttle: { type: 'string' },
    json: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const text = (option: string) => values[option] as string | undefined;
  const target = readTarget(text('target'), model);
  const range = text('speed')?.includes(':') === true;
  const speeds = readSpeeds(range ? 'range' : 'one', text('speed'));
  const throttle = readThrottle(text('throttle'));
  const vary = readVary(values['vary'] as string[] | undefined);
  const faults = [target, speeds, throttle, vary].flatMap((each) => (each.ok ? [] : each.faults));
  if (!target.ok || !speeds.ok || !throttle.ok || !vary.ok) return tell(faults, streams);
  const print = (json: object, report: string) =>
    streams.out(values['json'] ? `${JSON.stringify(json, null, 2)}\n` : report);
  if (range) {
    const found = finishStudy(matchRange(model, speeds.value, throttle.value, target.value, vary.value));
    print(
      rangeJson(design, model, target.value, found),
      rangeReport(design, model, target.value, speeds.value, found),
    );
    return found.length > 0 ? SOLVED : NO_ANSWER;
  }
  const point = { speed: speeds.value[0]!, throttle: throttle.value };
  const found = finishStudy(match(model, point, target.value, vary.value));
  if (!found.ok) {
    streams.err(`no answer at ${Math.round(point.speed / rpm)} rpm: ${found.faults[0]!.message}\n`);
    return NO_ANSWER;
  }
  print(matchJson(design, model, found.value), matchReport(design, model, found.value));
  return SOLVED;
}

function readTarget(text: string | undefined, { engine }: Model): Outcome<Target> {
  const refuse = (message: string) => failure([{ path: '--target', message }]);
  const form = `${TARGETS.join(', ')} = value, as deliveryRatio=1.2 or plenumPressure=0.3bar (above ambient)`;
  if (text === undefined) return refuse(`missing; give ${form}`);
  const [name, typed, ...more] = text.split('=').map((part) => part.trim());
  const figure = TARGETS.find((each) => each === name);
  if (!figure || typed === undefined || more.length > 0) return refuse(`is “${text}”; give ${form}`);
  const gauge = figure === 'plenumPressure';
  const read = parseQuantity(typed, gauge ? UNIT_OF_SUFFIX.barGauge : PLAIN);
  if (!read.ok) return failure(read.faults.map(({ message }) => ({ path: '--target', message })));
  const { value } = read.value;
  const [least, most] = gauge ? [-0.5e5, 3e5] : [0.05, 4];
  if (!(value >= least && value <= most)) {
    const range = gauge ? '−0.5 to 3 bar above ambient' : `${least} to ${most}`;
    return refuse(`${figure} is ${typed}; allowed ${range}`);
  }
  return success({ figure, value: gauge ? engine.ambient.pressure + value : value });
}

/** All knobs where none is named. */
function readVary(typed: readonly string[] | undefined): Outcome<readonly KnobName[]> {
  if (typed === undefined) return success(KNOBS);
  const faults: Fault[] = [];
  const names = typed.flatMap((text) => {
    const name = KNOBS.find((each) => each === text);
    if (!name)
      faults.push({ path: '--vary', message: `“${text}” cannot be varied; allowed: ${KNOBS.join(', ')}` });
    return name ? [name] : [];
  });
  return faults.length > 0 ? failure(faults) : success(names);
}
