import { cylinderName } from '../../design/cylinder-name.ts';
import { failure, success } from '../../sim/outcome.ts';
import type { Outcome } from '../../sim/outcome.ts';
import type { Model } from '../../sim/index.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import type { RunningTurns } from '../../sim/study/turns/running-turns.ts';
import { runningTurns, USUAL_TURNS } from '../../sim/study/turns/running-turns.ts';
import { TURNS_LIMITS, turnsSentence } from '../../sim/study/turns/turns-sentence.ts';
import { bar, rpm } from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { table } from '../table.ts';
import { faultsOf, POINT_OPTIONS, readPoint, readStudyArguments } from './study-arguments.ts';

/** `turns FILE --speed 1500 [--throttle 20%] [--turns 60] [--rest] [--json]`: which turns fire, cylinder by cylinder. */
export function runTurns(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    ...POINT_OPTIONS,
    turns: { type: 'string' },
    rest: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const asked = readPoint(values);
  const turns = readTurns(values['turns'] as string | undefined);
  if (!asked.ok || !turns.ok) return tell(faultsOf(asked, turns), streams);
  const point = asked.value;
  const found = finishStudy(
    runningTurns(model, point, { turns: turns.value, from: values['rest'] ? 'rest' : 'running' }),
  );
  if (!found.ok) {
    streams.err(`no answer at ${Math.round(point.speed / rpm)} rpm: ${found.faults[0]!.message}\n`);
    return NO_ANSWER;
  }
  const names = model.geometry.cylinders.map((each) => cylinderName(each.rowIndex, each.cylinderIndex));
  const sentence = turnsSentence(found.value, model.engine.combustion, point.speed, names);
  streams.out(
    values['json']
      ? `${JSON.stringify(turnsJson(design.name, sentence, names, found.value), null, 2)}\n`
      : turnsReport(design.name, sentence, names, model, found.value),
  );
  return SOLVED;
}

const MOST_TURNS = 2000;

function readTurns(text: string | undefined): Outcome<number> {
  if (text === undefined) return success(USUAL_TURNS);
  const turns = Number(text);
  return Number.isInteger(turns) && turns >= 4 && turns <= MOST_TURNS
    ? success(turns)
    : failure([{ path: '--turns', message: `is ${text}; allowed whole numbers from 4 to ${MOST_TURNS}` }]);
}

function turnsReport(
  design: string,
  sentence: string,
  names: readonly string[],
  { engine }: Model,
  { turns, judged, rhythms }: RunningTurns,
): string {
  const fixed = (value: number, digits: number) => value.toFixed(digits).replace('-', '−');
  const rows = turns.map(({ turn, imep, cylinders }) => {
    const residuals = cylinders.map(({ residual }) => residual);
    return [
      String(turn),
      fixed(imep / bar, 2),
      ...cylinders.map(
        ({ fired, residual }) => `${fired ? '●' : '·'} ${fixed(100 * residual, 0).padStart(3)}`,
      ),
      fixed(100 * (residuals.reduce((sum, each) => sum + each, 0) / residuals.length), 0),
    ];
  });
  return [
    `${design}: ${sentence}`,
    '',
    table(['turn', 'IMEP bar', ...names, 'mean'], rows),
    '',
    `● fires, · skips; beside it burned gas at the spark, percent by mass (limit ${fixed(100 * engine.combustion.misfireResidual, 0)}). Work of a charge may fall into the turn after its spark.`,
    `Of the last ${judged} turns each fires: ${names.map((name, j) => `${name} ${fixed(100 * rhythms[j]!.share, 0)} %`).join(', ')}.`,
    TURNS_LIMITS,
    '',
    CAUTION,
    '',
  ].join('\n');
}

const turnsJson = (
  design: string,
  sentence: string,
  names: readonly string[],
  { turns, judged, rhythms, imep, averaged, broke }: RunningTurns,
) => ({
  design,
  sentence,
  judgedTurns: judged,
  meanImep_Pa: imep.mean,
  leastImep_Pa: imep.least,
  mostImep_Pa: imep.most,
  averagedImep_Pa: averaged,
  broke,
  cylinders: names.map((name, j) => ({ name, order: rhythms[j]!.order, share: rhythms[j]!.share })),
  turns: turns.map((turn) => ({
    turn: turn.turn,
    imep_Pa: turn.imep,
    cylinders: turn.cylinders.map(({ fired, residual, lambda, imep }) => ({
      fired,
      residual,
      lambda,
      imep_Pa: imep,
    })),
  })),
});
