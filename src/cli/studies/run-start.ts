import { cylinderName } from '../../design/cylinder-name.ts';
import type { Model } from '../../sim/index.ts';
import { starting } from '../../sim/study/starting/starting.ts';
import type { Starting } from '../../sim/study/starting/starting.ts';
import { STARTING_CAUTION, startingSentence } from '../../sim/study/starting/starting-sentence.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import { bar, cc, mbar, rpm } from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { table } from '../table.ts';
import { POINT_OPTIONS, readPoint, readStudyArguments } from './study-arguments.ts';

/** `start FILE [--speed 300] [--throttle 80%] [--warm] [--json]`: cranking turn by turn until it catches. */
export function runStart(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    ...POINT_OPTIONS,
    warm: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const asked = readPoint(values, model.engine.wanted.crankingSpeed);
  if (!asked.ok) return tell(asked.faults, streams);
  const point = asked.value;
  const found = finishStudy(starting(model, point, { cold: !values['warm'] }));
  if (!found.ok) {
    streams.err(`no answer at ${Math.round(point.speed / rpm)} rpm: ${found.faults[0]!.message}\n`);
    return NO_ANSWER;
  }
  streams.out(
    values['json']
      ? `${JSON.stringify(startJson(design.name, model, found.value), null, 2)}\n`
      : startReport(design.name, model, found.value),
  );
  return SOLVED;
}

const nameOf = ({ geometry }: Model, j: number): string =>
  cylinderName(geometry.cylinders[j]!.rowIndex, geometry.cylinders[j]!.cylinderIndex);

function startReport(design: string, model: Model, study: Starting): string {
  const fixed = (value: number, digits: number) => value.toFixed(digits).replace('-', '−');
  const rows = study.turns.map((turn) => [
    String(turn.turn),
    fixed(turn.speed / rpm, 0),
    fixed(turn.torque.needed, 2),
    fixed(turn.torque.peak, 1),
    fixed(turn.torque.gas, 2),
    fixed(turn.torque.friction, 2),
    fixed(turn.torque.blower, 2),
    Math.abs(turn.plenumGauge) < 0.1 * bar
      ? fixed(turn.plenumGauge / mbar, 2)
      : fixed(turn.plenumGauge / mbar, 0),
    fixed(100 * turn.plenumFuelled, 0),
    fixed((turn.air + turn.fuel) * 1e3, 3),
    turn.richest === null || turn.richest > 99 ? '–' : fixed(turn.richest, 2),
    turn.fired.length === model.geometry.cylinders.length && turn.fired.length > 1
      ? 'all'
      : turn.fired.map((j) => nameOf(model, j)).join(' '),
  ]);
  const head = [
    'turn',
    'rpm',
    'N m',
    'peak',
    'gas',
    'friction',
    'blower',
    'plenum mbar',
    'fuelled %',
    'mixture g',
    'richest λ',
    'fires',
  ];
  return [
    startingSentence(study, model.engine),
    '',
    study.wettedVolume > 0
      ? `${design}: mixture fills ${fixed(study.wettedVolume / cc, 0)} cc on its way to the cylinders, as much as the blower ${model.engine.blower.impeller ? 'carries at its best flow' : 'displaces'} in ${fixed(study.turnsToDisplace, 1)} turns.`
      : `${design}: fuel joins the air in the cylinders.`,
    table(head, rows),
    '',
    'N m: what turning it takes, of which gas, friction and blower; negative where the engine turns itself. Mixture: through the transfer windows in the turn.',
    STARTING_CAUTION,
    '',
    CAUTION,
    '',
  ].join('\n');
}

function startJson(design: string, model: Model, study: Starting) {
  return {
    design,
    sentence: startingSentence(study, model.engine),
    wettedVolume_m3: study.wettedVolume,
    turnsToDisplace: study.turnsToDisplace,
    combustibleInTurn: study.combustible,
    firstFiringTurn: study.firstFiring,
    catchesInTurn: study.catches,
    torqueNeeded_N_m: study.torqueNeeded,
    peakTorque_N_m: study.peakTorque,
    slowest_rpm: study.slowest === null ? null : study.slowest / rpm,
    broke: study.broke,
    turns: study.turns.map((turn) => ({
      turn: turn.turn,
      speed_rpm: turn.speed / rpm,
      torqueNeeded_N_m: turn.torque.needed,
      peakTorque_N_m: turn.torque.peak,
      gasTorque_N_m: turn.torque.gas,
      frictionTorque_N_m: turn.torque.friction,
      blowerTorque_N_m: turn.torque.blower,
      plenumGauge_Pa: turn.plenumGauge,
      plenumFuelledShare: turn.plenumFuelled,
      air_kg: turn.air,
      fuel_kg: turn.fuel,
      richestLambda: turn.richest,
      fired: turn.fired.map((j) => nameOf(model, j)),
    })),
  };
}
