import { finishStudy } from '../../../sim/index.ts';
import { alternatives } from '../../../sim/study/even/alternatives.ts';
import { candidates } from '../../../sim/study/even/candidates.ts';
import { evenOut } from '../../../sim/study/even/even-out.ts';
import { evenness } from '../../../sim/study/even/evenness.ts';
import { reach } from '../../../sim/study/even/reach.ts';
import { failure, success } from '../../../sim/outcome.ts';
import type { Outcome } from '../../../sim/outcome.ts';
import { rpm } from '../../../sim/units.ts';
import { NO_ANSWER, SOLVED, tell } from '../../streams.ts';
import type { Streams } from '../../streams.ts';
import { faultsOf, POINT_OPTIONS, readPoint, readStudyArguments } from '../study-arguments.ts';
import { readAims, readGrouping, readMeans, readMeasure } from './even-arguments.ts';
import { evenJson, reachJson, waysJson } from './even-json.ts';
import { evenReport } from './even-report.ts';
import { reachReport, waysReport } from './ways-report.ts';

/**
 * `even FILE --speed 6000`: how unequal the cylinders are, why, and a shop list; with `--alternatives` ways to put the engine
 * together, with `--reach` whose exhaust reaches whom.
 */
export function runEven(argv: readonly string[], streams: Streams): number {
  const several = { type: 'string', multiple: true } as const;
  const request = readStudyArguments(argv, {
    ...POINT_OPTIONS,
    means: { type: 'string' },
    step: several,
    limit: several,
    tolerance: several,
    weigh: several,
    alternatives: { type: 'boolean' },
    by: { type: 'string' },
    grouping: { type: 'string' },
    reach: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const text = (option: string) => values[option] as string | undefined;
  const list = (option: string) => (values[option] as string[] | undefined) ?? [];
  const what = whatIsAsked(values);
  const asked = readPoint(values);
  const means = readMeans(text('means'), list('step'), list('limit'));
  const aims = readAims(list('tolerance'), list('weigh'));
  const by = readMeasure(text('by'));
  const grouping = readGrouping(text('grouping'), model.geometry.cylinders.length);
  if (!what.ok || !asked.ok || !means.ok || !aims.ok || !by.ok || !grouping.ok)
    return tell(faultsOf(what, asked, means, aims, by, grouping), streams);
  const point = asked.value;
  const print = (json: object, report: string): number => {
    streams.out(values['json'] ? `${JSON.stringify(json, null, 2)}\n` : report);
    return SOLVED;
  };
  const noAnswer = (message: string): number => {
    streams.err(`no answer at ${Math.round(point.speed / rpm)} rpm: ${message}\n`);
    return NO_ANSWER;
  };
  switch (what.value) {
    case 'alternatives': {
      const found = finishStudy(alternatives(model, point, candidates(model, grouping.value)));
      if (found.ways.every(({ measures }) => measures === null)) return noAnswer(found.ways[0]!.reason!);
      return print(waysJson(design, model.engine, found, by.value), waysReport(design, found, by.value));
    }
    case 'reach': {
      const found = finishStudy(reach(model, point));
      if (!found.ok) return noAnswer(found.faults[0]!.message);
      return print(reachJson(design, found.value), reachReport(design, found.value));
    }
    case 'evenness': {
      const found = finishStudy(evenness(model, point));
      if (!found.ok) return noAnswer(found.faults[0]!.message);
      const evened = finishStudy(evenOut(model, point, aims.value, means.value));
      if (!evened.ok) return noAnswer(evened.faults[0]!.message);
      return print(
        evenJson(design, found.value, evened.value),
        evenReport(design, found.value, evened.value),
      );
    }
  }
}

type What = 'evenness' | 'alternatives' | 'reach';

/** One of three questions, and no option that belongs to another. */
function whatIsAsked(values: Readonly<Record<string, unknown>>): Outcome<What> {
  const given = (option: string) => values[option] !== undefined;
  if (given('alternatives') && given('reach'))
    return failure([{ path: '--reach', message: 'give either --alternatives or --reach' }]);
  const what = given('alternatives') ? 'alternatives' : given('reach') ? 'reach' : 'evenness';
  const belongs: Readonly<Record<What, readonly string[]>> = {
    evenness: ['means', 'step', 'limit', 'tolerance', 'weigh'],
    alternatives: ['by', 'grouping'],
    reach: [],
  };
  const astray = Object.values(belongs)
    .flat()
    .filter((option) => given(option) && !belongs[what].includes(option));
  return astray.length === 0
    ? success(what)
    : failure(
        astray.map((option) => ({
          path: `--${option}`,
          message: what === 'evenness' ? 'goes with --alternatives' : `does not go with --${what}`,
        })),
      );
}
