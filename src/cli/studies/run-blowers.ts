import { blowerKinds } from '../../sim/study/air/blower-kinds.ts';
import type { BlowerKinds, KindOfBlower, KindPoint } from '../../sim/study/air/blower-kinds.ts';
import { KIND_NAMES, kindsSentence } from '../../sim/study/air/kinds-sentence.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import { bar, cc, celsiusFromKelvin, kW, mm, rpm } from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { table } from '../table.ts';
import { POINT_OPTIONS, readPoint, readStudyArguments } from './study-arguments.ts';

/** `blowers FILE --speed 6000 [--throttle 80%] [--json]`: kinds of blower that deliver the same there, side by side. */
export function runBlowers(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, POINT_OPTIONS);
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const point = readPoint(values);
  if (!point.ok) return tell(point.faults, streams);
  const found = finishStudy(blowerKinds(model, point.value));
  if (!found.ok) {
    streams.err(`no answer ${found.faults.map(({ message }) => message).join('; ')}\n`);
    return NO_ANSWER;
  }
  const { value } = found;
  streams.out(
    values['json']
      ? `${JSON.stringify(kindsJson(design.name, value), null, 2)}\n`
      : report(design.name, value, model.engine.wanted.deliveryRatio),
  );
  return SOLVED;
}

const fixed = (value: number, digits: number) => value.toFixed(digits).replace('-', '−');

function sizeOf({ kind, displacementPerTurn, ratio, volumeRatio, tipDiameter }: KindOfBlower): string {
  if (kind === 'centrifugal')
    return `wheel of ${fixed(tipDiameter / mm, 0)} mm at ${fixed(ratio, 1)} times crank speed`;
  const inside = volumeRatio > 1 ? `, compresses inside to 1/${fixed(volumeRatio, 2)} of the volume` : '';
  return `displaces ${fixed(displacementPerTurn / cc, 0)} cc a turn of the crank${inside}`;
}

function report(design: string, study: BlowerKinds, wanted: number): string {
  const rows = study.speeds.flatMap((speed, i) =>
    study.kinds.map((each) => [
      KIND_NAMES[each.kind],
      fixed(speed / rpm, 0),
      ...pointCells(each.points[i] ?? null),
    ]),
  );
  return [
    `${design}: kinds of blower`,
    kindsSentence(study, wanted),
    '',
    ...study.kinds.map(
      (each) => `  ${KIND_NAMES[each.kind]}${each.own ? ', the design’s own' : ''}: ${sizeOf(each)}`,
    ),
    '',
    table(['kind', 'rpm', 'delivered', 'plenum bar', 'takes kW', 'outlet °C', 'brake kW', ''], rows),
    '',
    'The wheel is one of usual coefficients, on no measured map, geared to any ratio; ripple is averaged in all.',
    CAUTION,
    '',
  ].join('\n');
}

const pointCells = (point: KindPoint | null): string[] =>
  point === null
    ? ['–', '–', '–', '–', '–', 'no answer']
    : [
        fixed(point.deliveryRatio, 3),
        fixed(point.plenumGauge / bar, 3),
        fixed(point.shaftPower / kW, 3),
        fixed(celsiusFromKelvin(point.outletTemperature), 0),
        fixed(point.brakePower / kW, 2),
        point.surges ? 'surges' : '',
      ];

const kindsJson = (design: string, { speeds, chosen, kinds }: BlowerKinds) => ({
  design,
  chosen_rpm: Number((chosen / rpm).toPrecision(12)),
  kinds: kinds.map(({ kind, own, displacementPerTurn, ratio, volumeRatio, tipDiameter, points }) => ({
    kind,
    own,
    displacement_m3_per_crankRev: displacementPerTurn,
    driveRatio: ratio,
    volumeRatio,
    tipDiameter_m: tipDiameter,
    points: points.map((point, i) => ({
      speed_rpm: Number((speeds[i]! / rpm).toPrecision(12)),
      converged: point !== null,
      ...(point && {
        deliveryRatio: point.deliveryRatio,
        plenumGauge_Pa: point.plenumGauge,
        shaftPower_W: point.shaftPower,
        brakePower_W: point.brakePower,
        outletTemperature_K: point.outletTemperature,
        isentropicEfficiency: point.isentropicEfficiency,
        surges: point.surges,
      }),
    })),
  })),
});
