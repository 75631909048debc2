import { cylinderName } from '../../design/cylinder-name.ts';
import { failure, success } from '../../sim/outcome.ts';
import type { Outcome } from '../../sim/outcome.ts';
import { camSentence, foundSentence, SPARK_LIMITS } from '../../sim/study/spark/spark-sentence.ts';
import type { SparkStudy } from '../../sim/study/spark/spark-study.ts';
import { sparkStudy, USUAL_LIMIT } from '../../sim/study/spark/spark-study.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import { bar, deg, rpm } from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { table } from '../table.ts';
import { faultsOf, POINT_OPTIONS, readPoint, readStudyArguments } from './study-arguments.ts';

/** `spark FILE --speed 6000 [--throttle 80%] [--integral 0.9] [--json]`: cam error, best and knock-limited advance. */
export function runSpark(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    ...POINT_OPTIONS,
    integral: { type: 'string' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const asked = readPoint(values);
  const limit = readLimit(values['integral'] as string | undefined);
  if (!asked.ok || !limit.ok) return tell(faultsOf(asked, limit), streams);
  const point = asked.value;
  const found = finishStudy(sparkStudy(model, point, limit.value));
  if (!found.ok) {
    streams.err(`no answer at ${Math.round(point.speed / rpm)} rpm: ${found.faults[0]!.message}\n`);
    return NO_ANSWER;
  }
  const names = model.geometry.cylinders.map((each) => cylinderName(each.rowIndex, each.cylinderIndex));
  streams.out(
    values['json']
      ? `${JSON.stringify(sparkJson(design.name, names, found.value), null, 2)}\n`
      : sparkReport(design.name, names, found.value),
  );
  return SOLVED;
}

function readLimit(text: string | undefined): Outcome<number> {
  if (text === undefined) return success(USUAL_LIMIT);
  const value = Number(text.replace(',', '.'));
  return value > 0 && value <= 1
    ? success(value)
    : failure([{ path: '--integral', message: `is ${text}; allowed above 0 to 1, where end gas lights` }]);
}

function sparkReport(design: string, names: readonly string[], study: SparkStudy): string {
  const fixed = (value: number, digits: number) => value.toFixed(digits).replace('-', '−');
  const angle = (value: number) => (value === Infinity ? '–' : fixed(value / deg, 1));
  const worst = (integrals: readonly (number | null)[]) => Math.max(0, ...integrals.map((each) => each ?? 0));
  return [
    `${design}: ${foundSentence(study, names)}`,
    camSentence(study, names),
    '',
    table(
      ['advance °', 'torque N m', 'IMEP bar', 'highest peak bar', 'worst knock integral'],
      study.points.map((each) => [
        angle(each.advance),
        fixed(each.torque, 2),
        fixed(each.imep / bar, 3),
        fixed(Math.max(...each.peakPressures) / bar, 1),
        fixed(worst(each.integrals), 3),
      ]),
    ),
    '',
    table(
      ['cylinder', 'even cam early °', `advance to integral ${study.limit} °`],
      names.map((name, j) => [name, fixed(study.early[j]! / deg, 2), angle(study.knockLimitedOf[j]!)]),
    ),
    '',
    'Advance before the dead centre that sparks are counted from. An even cam is early (+) or late (−) of each piston’s own dead centre.',
    SPARK_LIMITS,
    '',
    CAUTION,
    '',
  ].join('\n');
}

const finite = (angle: number): number | null => (Number.isFinite(angle) ? angle / deg : null);

const sparkJson = (design: string, names: readonly string[], study: SparkStudy) => ({
  design,
  sentences: [foundSentence(study, names), camSentence(study, names)],
  advanceNow_deg: study.now / deg,
  bestAdvance_deg: study.best && study.best.advance / deg,
  bestTorque_N_m: study.best && study.best.torque,
  knockIntegralAllowed: study.limit,
  knockLimitedAdvance_deg: finite(study.knockLimited),
  cylinders: names.map((name, j) => ({
    name,
    evenCamEarly_deg: study.early[j]! / deg,
    knockLimitedAdvance_deg: finite(study.knockLimitedOf[j]!),
  })),
  ways:
    study.ways &&
    Object.entries(study.ways).map(([sparksFrom, each]) => ({
      sparksFrom,
      imep_Pa: each.imep,
      torque_N_m: each.torque,
      peakPressures_Pa: each.peaks,
      knockMargin: each.knockMargin,
    })),
  points: study.points.map((each) => ({
    advance_deg: each.advance / deg,
    torque_N_m: each.torque,
    imep_Pa: each.imep,
    knockIntegrals: each.integrals,
    peakPressures_Pa: each.peakPressures,
  })),
});
