import { withLambda } from '../../cycle/mixture-at.ts';
import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import { solve } from '../../cycle/solve.ts';
import type { PeriodStart } from '../../cycle/start.ts';
import { runningGuess } from '../../cycle/start.ts';
import { CycleSystem } from '../../cycle/system.ts';
import type { Outcome } from '../../outcome.ts';
import { failure, success } from '../../outcome.ts';
import type { Study } from '../study-step.ts';
import { doing } from '../study-step.ts';
import type { Turn } from '../turn-by-turn.ts';
import { turnByTurn } from '../turn-by-turn.ts';
import type { Rhythm } from './rhythm.ts';
import { rhythmOf } from './rhythm.ts';

/** What one cylinder does in one turn of the crank. */
export interface CylinderTurn {
  /** Whether the spark of this turn lit it; its work may fall into the next. */
  readonly fired: boolean;
  /** At that spark, burned gas by mass, and air over fuel over stoichiometric, null without fuel [-]. */
  readonly residual: number;
  readonly lambda: number | null;
  /** Work of the turn over own swept volume [Pa]. */
  readonly imep: number;
}

export interface RunningTurn {
  /** Counted from 1. */
  readonly turn: number;
  /** Of the engine [Pa]. */
  readonly imep: number;
  readonly cylinders: readonly CylinderTurn[];
}

export interface RunningTurns {
  readonly turns: readonly RunningTurn[];
  /** Turns at the end from which rhythms and means are read; the ones before settle. */
  readonly judged: number;
  /** Cylinder by cylinder. */
  readonly rhythms: readonly Rhythm[];
  /** Over the judged turns [Pa]. */
  readonly imep: { readonly mean: number; readonly least: number; readonly most: number };
  /** IMEP of the averaged periodic state that the turns begin with [Pa]; null where it has none. */
  readonly averaged: number | null;
  /** Why the turns ended early; null where they did not. */
  readonly broke: string | null;
}

export interface RunningTurnsOptions {
  readonly turns?: number;
  /** Where they begin: at the averaged periodic state, or at rest and full of air. */
  readonly from?: 'running' | 'rest';
}

/** Half of them settle: a collector or a plenum is swept many times in thirty turns. */
export const USUAL_TURNS = 60;
/** Periods given to the averaged state: engines that misfire may have none. */
const PATIENCE = 120;

/**
 * A running engine followed turn by turn, every charge burning wholly or not at all: what the averaged state is an average of.
 *
 *   fires if  residual at the spark <= its limit  and  rich limit <= lambda at the spark <= lean limit
 *
 * A charge that does not burn leaves a cylinder that is easier to fire in the next turn: near the limit an engine fires every second
 * turn (four-strokes), or every third, or in no order.
 *
 * Valid: one limit for every charge. Real flames differ from turn to turn at equal charge, so the change from firing to skipping is
 * wider than here, and orders are less regular. Speed is held.
 * Source: limits as in combustion/completeness.ts; balances over each turn.
 */
export function* runningTurns(
  model: Model,
  point: OperatingPoint,
  { turns: wanted = USUAL_TURNS, from = 'running' }: RunningTurnsOptions = {},
): Study<Outcome<RunningTurns>> {
  let start: PeriodStart | undefined;
  let averaged: number | null = null;
  let { lambda } = model.engine.charge;
  if (from === 'running') {
    const { result, next } = yield* doing(
      'the averaged state',
      solve(model, point, { mostCycles: PATIENCE }),
    );
    averaged = result.converged ? result.engine.imep : null;
    if (result.converged) ({ lambda } = result.engine);
    start = next ?? runningGuess(new CycleSystem(model, point));
  }
  const turns: RunningTurn[] = [];
  const run = turnByTurn(withLambda(model, lambda), point, start ? { start } : {});
  let broke: string | null = null;
  while (turns.length < wanted) {
    const next = run.next();
    if (next.done) {
      broke = next.value?.reason ?? null;
      break;
    }
    turns.push(turnOf(next.value));
    yield { doing: `turn ${turns.length}` };
  }
  if (turns.length === 0) return failure([{ path: '', message: broke ?? 'no turn could be stepped' }]);

  const judged = Math.ceil(turns.length / 2);
  const last = turns.slice(-judged);
  const imeps = last.map(({ imep }) => imep);
  return success({
    turns,
    judged,
    rhythms: model.geometry.cylinders.map((_, j) =>
      rhythmOf(last.map(({ cylinders }) => cylinders[j]!.fired)),
    ),
    imep: {
      mean: imeps.reduce((sum, imep) => sum + imep, 0) / judged,
      least: Math.min(...imeps),
      most: Math.max(...imeps),
    },
    averaged,
    broke,
  });
}

const turnOf = ({ turn, figures, charges }: Turn): RunningTurn => ({
  turn,
  imep: figures.engine.imep,
  cylinders: charges.map(({ fired, residual, lambda }, j) => ({
    fired,
    residual,
    lambda,
    imep: figures.cylinders[j]!.imep,
  })),
});
